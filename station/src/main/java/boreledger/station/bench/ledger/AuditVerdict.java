package boreledger.station.bench.ledger;

/** How an audit went. */
public enum AuditVerdict {
  /** Nothing is known. */
  NONE,
  /** Nothing was found. */
  INTACT,
  /** Something was found. */
  FINDINGS,
  /** It did not come to its end. */
  FAILED
}
