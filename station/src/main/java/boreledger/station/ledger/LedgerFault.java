package boreledger.station.ledger;

/** The ledger is missing, or could not be read or written. The message says how to mend it. */
public final class LedgerFault extends Exception {
  private static final long serialVersionUID = 1L;

  /** A fault with a one-line message for a person. */
  public LedgerFault(String message) {
    super(message);
  }

  /** A fault with its technical cause. */
  public LedgerFault(String message, Throwable cause) {
    super(message, cause);
  }
}
