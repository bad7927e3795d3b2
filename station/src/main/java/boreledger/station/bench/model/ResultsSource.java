package boreledger.station.bench.model;

import boreledger.station.ledger.LedgerFault;
import boreledger.station.results.JobResults;

/** Says what the readings of the shown session's job mean. */
@FunctionalInterface
public interface ResultsSource {
  /**
   * The results as of now. Called on a background thread, never twice at a time.
   *
   * @throws LedgerFault if the readings cannot be read; its message is shown to the person
   */
  JobResults results() throws LedgerFault;
}
