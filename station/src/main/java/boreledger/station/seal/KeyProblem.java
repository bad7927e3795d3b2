package boreledger.station.seal;

/** A key file that cannot be used; the message is one line and says how to mend it. */
public final class KeyProblem extends Exception {
  private static final long serialVersionUID = 1L;

  KeyProblem(String message) {
    super(message);
  }

  KeyProblem(String message, Throwable cause) {
    super(message, cause);
  }
}
