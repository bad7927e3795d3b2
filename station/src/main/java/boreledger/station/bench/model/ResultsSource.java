package boreledger.station.bench.model;

import boreledger.station.ledger.LedgerFault;
import boreledger.station.results.JobResults;
import java.util.Optional;

/** Says what the readings of the shown session's job mean. */
@FunctionalInterface
public interface ResultsSource {
  /**
   * The results as of now; empty when nothing was gauged yet. Called on a background thread, never
   * twice at a time.
   *
   * @throws LedgerFault if the readings cannot be read; its message is shown to the person
   */
  Optional<JobResults> results() throws LedgerFault;
}
