package boreledger.calc.bore;

import boreledger.calc.input.Require;

/**
 * One reading of the bore gauge at one position of a cylinder.
 *
 * @param depthMm below the deck in millimetres; zero or more
 * @param axis the direction's name, such as {@code thrust}
 * @param tS when, in seconds on the checks' clock
 * @param valueMm what the gauge showed, deviation or size as its checks, in millimetres
 * @param standardUncertaintyMm how well its own samples fix it, in millimetres, in place of the
 *     session's repeatability; null when they do not say
 */
public record BoreReading(
    double depthMm, String axis, double tS, double valueMm, Double standardUncertaintyMm) {
  /** Checks every number. */
  public BoreReading {
    Require.notNegative("depth", depthMm, "mm");
    Require.finite("time of a reading", tS, "s");
    Require.finite("reading", valueMm, "mm");
    if (standardUncertaintyMm != null) {
      Require.notNegative("standard uncertainty of a reading", standardUncertaintyMm, "mm");
    }
  }
}
