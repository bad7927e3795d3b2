package boreledger.station.bench.ledger;

/** The parts of the room, of which one is shown. */
public enum LedgerPart {
  /** Sessions and their readings. */
  SESSIONS,
  /** Checking and sealing. */
  AUDIT,
  /** The build sheet. */
  SHEET
}
