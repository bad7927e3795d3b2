package boreledger.station.gauging;

/** Why a gauging run is over. */
public enum Ending {
  /** Every position has its reading. */
  PLAN_DONE,
  /** The line has no more to give: a capture file is played out. */
  LINE_ENDED,
  /** The line broke; the session can be resumed. */
  LINE_BROKE,
  /** A person stopped it; the session can be resumed. */
  STOPPED,
  /** Something could not be kept in the ledger; the session can be resumed. */
  LEDGER_FAILED
}
