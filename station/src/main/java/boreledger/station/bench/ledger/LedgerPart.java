package boreledger.station.bench.ledger;

/** The parts of the room, of which one is shown. */
public enum LedgerPart {
  /** Sessions and their readings. */
  SESSIONS,
  /** Two sessions held against each other. */
  COMPARE,
  /** Checking and sealing. */
  AUDIT,
  /** The build sheet. */
  SHEET
}
