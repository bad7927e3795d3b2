package boreledger.station.app;

import boreledger.drivers.file.FileProblem;
import boreledger.station.job.Job;
import boreledger.station.job.JobFiles;
import boreledger.station.job.JobSource;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SessionResumed;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.session.Change;
import boreledger.station.session.StoredSession;
import java.nio.file.Path;

/**
 * What a session should have been opened with, as a person asks for it.
 *
 * @param settingTempC the setting ring's temperature in degrees Celsius; null when it stays
 * @param blockTempC the block's temperature in degrees Celsius; null when it stays
 * @param fromEntry the reading or resumption from which the temperatures hold; null for all of it
 * @param job the job file; null when it stays
 */
public record SessionChange(Double settingTempC, Double blockTempC, Long fromEntry, Path job) {
  Change of(LedgerView view, StoredSession session) throws LedgerFault, UsageProblem, FileProblem {
    return new Change(
        fromEntry == null ? 0 : momentS(view, session),
        settingTempC,
        blockTempC,
        job == null ? null : document(view, session));
  }

  private double momentS(LedgerView view, StoredSession session) throws LedgerFault, UsageProblem {
    EntryBody body = view.entry(fromEntry).map(Entry::body).orElse(null);
    if (body instanceof ReadingTaken reading && reading.session() == session.id()) {
      return reading.tS();
    } else if (body instanceof SessionResumed resumed && resumed.session() == session.id()) {
      return resumed.tS();
    }
    throw new UsageProblem(
        "entry " + fromEntry + " is no reading or resumption of session " + session.id());
  }

  /** The file, which must be of the same job and plan: its readings stay where they are. */
  private Document document(LedgerView view, StoredSession session)
      throws LedgerFault, UsageProblem, FileProblem {
    StoredJobs jobs = new StoredJobs(view);
    Job wanted = new JobFiles(jobs.tablesOf(session.opened())).read(job);
    if (!wanted.name().equals(session.opened().jobName())) {
      throw new UsageProblem(
          job
              + ": is the job \""
              + wanted.name()
              + "\", session "
              + session.id()
              + " is of \""
              + session.opened().jobName()
              + "\"");
    }
    if (!SessionPlan.of(wanted, session.opened()).equals(SessionPlan.of(view, session))) {
      throw new UsageProblem(
          job
              + ": plans other positions than session "
              + session.id()
              + " was gauged at; open a new session with it");
    }
    JobSource source = wanted.source();
    return new Document("job", source.fileName(), source.sha256(), source.text());
  }
}
