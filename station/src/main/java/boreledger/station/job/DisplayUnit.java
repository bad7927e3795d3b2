package boreledger.station.job;

/** The unit in which screens and reports show lengths. */
public enum DisplayUnit {
  /** Millimetres. */
  MM,
  /** Inches. */
  IN
}
