package boreledger.calc.ring;

import boreledger.calc.bore.ReferenceTemperature;
import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import boreledger.calc.uncertainty.Component;
import boreledger.calc.uncertainty.TypeB;

/**
 * A piston ring.
 *
 * @param ctePerK its linear expansion coefficient per kelvin
 * @param radialWallMm its radial wall in millimetres; null for a 24th of the bore (common practice,
 *     no source)
 */
public record Ring(double ctePerK, Double radialWallMm) {
  private static final double BORES_PER_WALL = 24;

  /** Checks both numbers. */
  public Ring {
    Require.finite("ring's expansion coefficient", ctePerK, "per kelvin");
    if (radialWallMm != null) {
      Require.positive("radial wall", radialWallMm, "mm");
    }
  }

  /** A ring with the usual radial wall. */
  public static Ring of(double ctePerK) {
    return new Ring(ctePerK, null);
  }

  /**
   * The length along the ring at 20 degrees Celsius.
   *
   * @param perimeterMm the bore's perimeter at 20 degrees Celsius where the gap was read
   * @param gapMm the gap as read
   * @param tempC temperature of bore and ring when it was read
   * @param boreCtePerK the bore's expansion coefficient
   */
  public double developedLengthMm(
      double perimeterMm, double gapMm, double tempC, double boreCtePerK) {
    double boreThenMm = perimeterMm * ReferenceTemperature.growth(boreCtePerK, tempC);
    return (boreThenMm - gapMm) / ReferenceTemperature.growth(ctePerK, tempC);
  }

  /**
   * What the place of the neutral fibre does to a gap's change. The fibre lies in the middle of the
   * wall t: at the outer edge of the gap the change is D/(D - t) of the perimeter's change, at the
   * inner edge as much less.
   *
   * @param perimeterChangeMm the change of perimeter in millimetres
   * @param boreMm the bore in millimetres
   * @throws ImpossibleInput when the wall is not thinner than half the bore
   */
  Component fibre(double perimeterChangeMm, double boreMm) {
    double wallMm = radialWallMm == null ? boreMm / BORES_PER_WALL : radialWallMm;
    if (wallMm >= boreMm / 2) {
      throw new ImpossibleInput(
          "radial wall " + wallMm + " mm is not below half the bore of " + boreMm + " mm");
    }
    double halfWidthMm = Math.abs(perimeterChangeMm) * wallMm / (boreMm - wallMm);
    return Component.typeB("neutral fibre of the ring", TypeB.rectangular(halfWidthMm));
  }
}
