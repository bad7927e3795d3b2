package boreledger.station.report;

/** The paper of a sheet; sizes in points of 1/72 inch. */
public enum Paper {
  /** ISO 216 A4, 210 mm by 297 mm. */
  A4(210 / 25.4 * 72, 297 / 25.4 * 72),
  /** ANSI Y14.1 A, 8.5 in by 11 in. */
  LETTER(8.5 * 72, 11 * 72);

  /** What is left free on all four sides. */
  static final double MARGIN = 40;

  private final double width;
  private final double height;

  Paper(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** The width in points. */
  public double width() {
    return width;
  }

  /** The height in points. */
  public double height() {
    return height;
  }
}
