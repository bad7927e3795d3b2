package boreledger.drivers.line;

/** A line could not be opened, or broke. The message says which line, what happened, what to do. */
public final class LineFault extends Exception {
  private static final long serialVersionUID = 1L;

  /** A fault with a one-line message for a person. */
  public LineFault(String message) {
    super(message);
  }

  /** A fault with its technical cause. */
  public LineFault(String message, Throwable cause) {
    super(message, cause);
  }
}
