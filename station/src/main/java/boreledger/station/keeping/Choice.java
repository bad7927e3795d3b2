package boreledger.station.keeping;

import boreledger.station.app.UsageProblem;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import java.util.List;

/**
 * Which sessions are wanted.
 *
 * @param job the job's name; null for any
 * @param session the session's number; null for any
 */
public record Choice(String job, Long session) {
  /** Whether everything is wanted. */
  boolean isAll() {
    return job == null && session == null;
  }

  /**
   * The openings of the sessions that are wanted, oldest first.
   *
   * @throws UsageProblem if there is none and one was named
   */
  List<Entry> openings(LedgerView view) throws LedgerFault, UsageProblem {
    List<Entry> chosen = view.sessions().stream().filter(this::wants).toList();
    if (chosen.isEmpty() && !isAll()) {
      throw new UsageProblem(
          "no session"
              + (session == null ? "" : " " + session)
              + (job == null ? "" : " of the job \"" + job + "\"")
              + " in this ledger; results names its jobs");
    }
    return chosen;
  }

  private boolean wants(Entry opening) {
    SessionOpened opened = (SessionOpened) opening.body();
    return (job == null || job.equals(opened.jobName()))
        && (session == null || session == opening.seq());
  }
}
