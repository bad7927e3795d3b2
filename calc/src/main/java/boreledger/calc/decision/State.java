package boreledger.calc.decision;

/** What can be said about a value and its limit. */
public enum State {
  /** Inside the limit by more than the guard band. */
  WITHIN("within"),
  /** Outside the limit by more than the guard band. */
  BEYOND("beyond"),
  /** Nearer to the limit than the guard band: the measurement cannot tell. */
  UNDECIDED("undecided");

  private final String word;

  State(String word) {
    this.word = word;
  }

  /** The word in files and answers. */
  public String word() {
    return word;
  }
}
