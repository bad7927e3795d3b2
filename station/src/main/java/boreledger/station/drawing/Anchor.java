package boreledger.station.drawing;

/** Which point of some words stands at the place given; the place is always on their baseline. */
public enum Anchor {
  /** The words begin there. */
  LEFT(0),
  /** Their middle is there. */
  CENTRE(0.5),
  /** They end there. */
  RIGHT(1);

  private final double share;

  Anchor(double share) {
    this.share = share;
  }

  /** Where words of a width begin when they are anchored at {@code x}. */
  public double left(double x, double width) {
    return x - share * width;
  }
}
