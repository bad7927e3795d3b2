package boreledger.station.bench.ledger;

/** What is exported. */
public enum ExportKind {
  /** The shown session's readings, as CSV. */
  SESSION,
  /** All readings, as CSV. */
  READINGS,
  /** Every entry with the chain, as JSON. */
  CHAIN
}
