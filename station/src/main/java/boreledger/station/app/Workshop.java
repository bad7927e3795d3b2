package boreledger.station.app;

import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.results.JobComputing;
import boreledger.station.results.JobResults;
import boreledger.station.results.JobSessions;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A ledger as the rooms of a window use it. Every call opens it anew, reads and closes it, and may
 * take its time; it is made off the screen's thread.
 *
 * @param ledger the file; it need not exist yet
 */
public record Workshop(Path ledger) {
  /**
   * What the readings of the job that was gauged last mean; empty when nothing was gauged yet.
   *
   * @throws LedgerFault if the ledger cannot be read
   */
  public Optional<JobResults> latestResults() throws LedgerFault {
    return latestSessions().map(JobComputing::of);
  }

  /**
   * What they are computed from, the job included; empty when nothing was gauged yet.
   *
   * @throws LedgerFault if the ledger cannot be read
   */
  public Optional<JobSessions> latestSessions() throws LedgerFault {
    Optional<LedgerView> view = LedgerView.openIfAny(ledger);
    if (view.isEmpty()) {
      return Optional.empty();
    }
    try (LedgerView open = view.get()) {
      return new StoredJobs(open).latestSessions();
    }
  }
}
