package boreledger.calc.gapping;

/** What is to be done about a ring's gap. */
public enum RingState {
  /** There is more to file than the gap's uncertainty. */
  FILE("file"),
  /** What is left to file is within the gap's uncertainty, or nothing is. */
  READY("ready"),
  /** The gap is above the maker's largest at the widest point of the travel. */
  TOO_WIDE("too-wide"),
  /** A gap reading, a target or a limit is missing. */
  UNKNOWN("unknown");

  private final String word;

  RingState(String word) {
    this.word = word;
  }

  /** The word in files and answers. */
  public String word() {
    return word;
  }
}
