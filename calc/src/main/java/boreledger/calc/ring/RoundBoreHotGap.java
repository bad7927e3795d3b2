package boreledger.calc.ring;

import boreledger.calc.input.Require;

/**
 * Hot and cold gap of a ring in a bore that is round and straight.
 *
 * @param boreMm the bore at 20 degrees Celsius in millimetres; above zero
 * @param expansion how bore and ring expand
 * @param wallTempC the bore's temperature when running
 * @param ringTempC the ring's temperature when running
 */
public record RoundBoreHotGap(
    double boreMm, FreeExpansion expansion, double wallTempC, double ringTempC) {
  /** Checks every number. */
  public RoundBoreHotGap {
    Require.positive("bore", boreMm, "mm");
    Require.finite("wall temperature", wallTempC, "degC");
    Require.finite("ring temperature", ringTempC, "degC");
  }

  /**
   * The gap when running, in millimetres; below zero when the ends butt.
   *
   * @param coldGapMm the gap at 20 degrees Celsius; zero or more
   */
  public double hotGapMm(double coldGapMm) {
    Require.notNegative("cold gap", coldGapMm, "mm");
    return expansion.hotGapMm(perimeterMm(), perimeterMm() - coldGapMm, wallTempC, ringTempC);
  }

  /**
   * The gap at 20 degrees Celsius that leaves a gap when running, in millimetres; below zero when
   * the bore grows so much more that even a ring without a gap would have one.
   *
   * @param hotGapMm the gap wanted when running; 0 for ends that just touch
   */
  public double coldGapForMm(double hotGapMm) {
    Require.finite("hot gap", hotGapMm, "mm");
    return perimeterMm() - expansion.ringLengthForMm(perimeterMm(), hotGapMm, wallTempC, ringTempC);
  }

  private double perimeterMm() {
    return Math.PI * boreMm;
  }
}
