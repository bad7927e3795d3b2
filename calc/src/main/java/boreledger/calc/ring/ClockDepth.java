package boreledger.calc.ring;

import boreledger.calc.input.Require;

/**
 * A ring's depth below the deck at one clock position.
 *
 * @param clockDeg the position round the bore in degrees, any turn
 * @param depthMm the depth in millimetres; zero or more
 */
public record ClockDepth(double clockDeg, double depthMm) {
  /** Checks both numbers. */
  public ClockDepth {
    Require.finite("clock position", clockDeg, "degrees");
    Require.notNegative("ring depth", depthMm, "mm");
  }

  /** The position within one turn, 0 up to 360. */
  double withinTurnDeg() {
    double deg = clockDeg % 360;
    return deg < 0 ? deg + 360 : deg;
  }
}
