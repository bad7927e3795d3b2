package boreledger.station.app;

import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.Amended;
import boreledger.station.ledger.EntryBody.OfFiling;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.session.FiledPass;
import boreledger.station.session.StoredSession;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The sessions of a job: the latest of each measure and ring count, the others came before. */
final class JobHistory {
  private final LedgerView view;
  private final List<Entry> openings;
  private final Set<Long> counting;
  private Map<Long, String> amendedJobs;

  /**
   * A history.
   *
   * @param openings what opened the sessions, in their order
   */
  JobHistory(LedgerView view, List<Entry> openings) {
    this.view = view;
    this.openings = openings;
    Map<String, Long> latest = new HashMap<>();
    for (Entry opening : openings) {
      SessionOpened opened = (SessionOpened) opening.body();
      latest.put(opened.measure() + " " + opened.ring(), opening.seq());
    }
    counting = Set.copyOf(latest.values());
  }

  /** Those that count, in their order. */
  List<StoredSession> counting() throws LedgerFault {
    List<StoredSession> sessions = new ArrayList<>();
    for (Entry opening : openings) {
      if (counting.contains(opening.seq())) {
        sessions.add(StoredSession.withoutSamples(view, opening));
      }
    }
    return sessions;
  }

  /** What opened the others, in their order. */
  List<Entry> earlier() {
    return openings.stream().filter(opening -> !counting.contains(opening.seq())).toList();
  }

  /** The content hash of the job that holds for one of the others. */
  String job(Entry opening) throws LedgerFault {
    if (amendedJobs == null) {
      amendedJobs = amendedJobs();
    }
    return amendedJobs.getOrDefault(opening.seq(), ((SessionOpened) opening.body()).job());
  }

  /** The passes with the file that count, noted in whichever of the sessions. */
  List<FiledPass> filed() throws LedgerFault {
    Set<Long> own = openings.stream().map(Entry::seq).collect(Collectors.toSet());
    List<Entry> said = new ArrayList<>();
    for (Entry entry : view.filings()) {
      if (own.contains(((OfFiling) entry.body()).session())) {
        said.add(entry);
      }
    }
    boolean anyImported = !view.imports().isEmpty();
    for (Entry opening : anyImported ? openings : List.<Entry>of()) {
      if (view.isImported(opening.seq())) {
        said.addAll(view.importedFilings(opening.seq()));
      }
    }
    return FiledPass.counting(said);
  }

  private Map<Long, String> amendedJobs() throws LedgerFault {
    List<Entry> amendments = new ArrayList<>(view.amendments());
    boolean anyImported = !view.imports().isEmpty();
    for (Entry opening : anyImported ? earlier() : List.<Entry>of()) {
      if (view.isImported(opening.seq())) {
        amendments.addAll(view.importedAmendments(opening.seq()));
      }
    }
    Map<Long, String> jobs = new HashMap<>();
    for (Entry entry : amendments) {
      Amended amended = (Amended) entry.body();
      if (amended.job() != null) {
        jobs.put(amended.session(), amended.job());
      }
    }
    return jobs;
  }
}
