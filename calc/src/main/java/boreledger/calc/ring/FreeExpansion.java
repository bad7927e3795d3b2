package boreledger.calc.ring;

import boreledger.calc.bore.ReferenceTemperature;
import boreledger.calc.input.Require;

/**
 * A ring and a bore that expand freely with their temperatures. An estimate: pressure, oil and the
 * uneven heat of a running engine are not in it, and the ring maker's smallest gap stands above it.
 *
 * @param boreCtePerK the bore's linear expansion coefficient per kelvin
 * @param ringCtePerK the ring's linear expansion coefficient per kelvin
 */
public record FreeExpansion(double boreCtePerK, double ringCtePerK) {
  /** Checks both numbers. */
  public FreeExpansion {
    Require.finite("bore's expansion coefficient", boreCtePerK, "per kelvin");
    Require.finite("ring's expansion coefficient", ringCtePerK, "per kelvin");
  }

  /**
   * The gap of a hot ring in a hot bore, in millimetres; below zero when the ends butt.
   *
   * @param perimeterMm the bore's perimeter at 20 degrees Celsius
   * @param ringLengthMm the length along the ring at 20 degrees Celsius
   * @param wallTempC the bore's temperature there
   * @param ringTempC the ring's temperature
   */
  public double hotGapMm(
      double perimeterMm, double ringLengthMm, double wallTempC, double ringTempC) {
    return perimeterMm * ReferenceTemperature.growth(boreCtePerK, wallTempC)
        - ringLengthMm * ReferenceTemperature.growth(ringCtePerK, ringTempC);
  }

  /**
   * The length along the ring at 20 degrees Celsius that leaves a hot gap, in millimetres.
   *
   * @param hotGapMm the hot gap wanted
   */
  public double ringLengthForMm(
      double perimeterMm, double hotGapMm, double wallTempC, double ringTempC) {
    return (perimeterMm * ReferenceTemperature.growth(boreCtePerK, wallTempC) - hotGapMm)
        / ReferenceTemperature.growth(ringCtePerK, ringTempC);
  }
}
