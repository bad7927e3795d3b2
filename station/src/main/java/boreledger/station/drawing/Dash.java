package boreledger.station.drawing;

import java.util.List;

/** How a line is broken. */
public enum Dash {
  /** Not at all. */
  SOLID(List.of()),
  /** Dashes. */
  DASHED(List.of(6.0, 3.0)),
  /** Dots. */
  DOTTED(List.of(1.5, 2.0)),
  /** Dashes and dots. */
  DASH_DOT(List.of(7.0, 2.5, 1.5, 2.5));

  private final List<Double> lengths;

  Dash(List<Double> lengths) {
    this.lengths = lengths;
  }

  /** Lengths drawn and left free in turn, for a line one unit wide; empty for a whole line. */
  public List<Double> lengths() {
    return lengths;
  }
}
