package boreledger.station.app;

/** What was asked for cannot be done as asked. The message says why and how to ask instead. */
public final class UsageProblem extends Exception {
  private static final long serialVersionUID = 1L;

  /** A problem with a one-line message for a person. */
  public UsageProblem(String message) {
    super(message);
  }
}
