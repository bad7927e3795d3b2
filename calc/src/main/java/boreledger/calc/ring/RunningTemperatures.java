package boreledger.calc.ring;

import boreledger.calc.input.Require;

/**
 * Temperatures of a running engine, in degrees Celsius.
 *
 * @param ringTempC the ring's
 * @param wallTopTempC the bore's at the top of the ring's travel
 * @param wallBottomTempC the bore's at the bottom of the ring's travel
 */
public record RunningTemperatures(double ringTempC, double wallTopTempC, double wallBottomTempC) {
  /** Checks every number. */
  public RunningTemperatures {
    Require.finite("ring temperature", ringTempC, "degC");
    Require.finite("wall temperature at the top", wallTopTempC, "degC");
    Require.finite("wall temperature at the bottom", wallBottomTempC, "degC");
  }

  /**
   * The bore's temperature at a depth, running straight from the top of the travel to its bottom.
   */
  double wallTempC(Travel travel, double depthMm) {
    double part = (depthMm - travel.topMm()) / (travel.bottomMm() - travel.topMm());
    return wallTopTempC + part * (wallBottomTempC - wallTopTempC);
  }
}
