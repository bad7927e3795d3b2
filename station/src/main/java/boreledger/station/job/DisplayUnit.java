package boreledger.station.job;

/** The unit in which screens and reports show lengths. */
public enum DisplayUnit {
  /** Millimetres. */
  MM("mm"),
  /** Inches. */
  IN("in");

  private final String symbol;

  DisplayUnit(String symbol) {
    this.symbol = symbol;
  }

  /** The symbol in files and beside numbers. */
  public String symbol() {
    return symbol;
  }
}
