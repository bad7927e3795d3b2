package boreledger.calc.ring;

import boreledger.calc.input.Require;
import boreledger.calc.uncertainty.Budget;

/**
 * One reading of a ring's end gap.
 *
 * @param depthMm where the ring lay below the deck, in millimetres; zero or more
 * @param gapMm the gap as read, in millimetres; zero or more
 * @param tempC temperature of bore and ring in degrees Celsius; 20 when it was not taken
 * @param budget where its uncertainty comes from; above zero
 */
public record GapReading(double depthMm, double gapMm, double tempC, Budget budget) {
  /** Checks every number. */
  public GapReading {
    Require.notNegative("depth", depthMm, "mm");
    Require.notNegative("gap", gapMm, "mm");
    Require.finite("temperature", tempC, "degC");
    Require.positive("standard uncertainty of a gap", budget.combinedMm(), "mm");
  }
}
