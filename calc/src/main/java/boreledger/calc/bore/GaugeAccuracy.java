package boreledger.calc.bore;

import boreledger.calc.input.Require;

/**
 * What a gauge's certificate or data sheet promises.
 *
 * @param resolutionMm the step of its last digit in millimetres; zero or more
 * @param maxErrorMm maximum permissible error of one displacement in millimetres; zero or more
 * @param maxErrorIncludesResolution whether that error already holds the resolution
 * @param maxErrorIncludesRepeatability whether that error already holds the repeatability
 */
public record GaugeAccuracy(
    double resolutionMm,
    double maxErrorMm,
    boolean maxErrorIncludesResolution,
    boolean maxErrorIncludesRepeatability) {
  /** Checks both lengths. */
  public GaugeAccuracy {
    Require.notNegative("resolution", resolutionMm, "mm");
    Require.notNegative("permissible error", maxErrorMm, "mm");
  }

  /** A gauge whose permissible error holds neither resolution nor repeatability. */
  public static GaugeAccuracy of(double resolutionMm, double maxErrorMm) {
    return new GaugeAccuracy(resolutionMm, maxErrorMm, false, false);
  }
}
