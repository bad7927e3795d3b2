package boreledger.calc.oversize;

import boreledger.calc.bore.BoreProfile;
import boreledger.calc.bore.Diameter;
import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;

/**
 * What matters of a cylinder for its repair.
 *
 * @param cylinder its number
 * @param largestMm the largest diameter read, in millimetres
 * @param smallestMm the smallest diameter read
 * @param expandedUncertaintyMm of the largest diameter, for 95 %; zero or more
 * @param unwornMm the diameter where nothing wears, from which the original centre is told
 * @param pistonMm the piston's diameter; null when it was not measured
 */
public record WornCylinder(
    int cylinder,
    double largestMm,
    double smallestMm,
    double expandedUncertaintyMm,
    double unwornMm,
    Double pistonMm) {
  /**
   * Checks every number.
   *
   * @throws ImpossibleInput when the smallest or the unworn diameter is above the largest
   */
  public WornCylinder {
    Require.positive("smallest diameter", smallestMm, "mm");
    Require.finite("largest diameter", largestMm, "mm");
    Require.notNegative("expanded uncertainty", expandedUncertaintyMm, "mm");
    Require.positive("unworn diameter", unwornMm, "mm");
    notAbove("smallest", smallestMm, largestMm);
    notAbove("unworn", unwornMm, largestMm);
    if (pistonMm != null) {
      Require.positive("piston", pistonMm, "mm");
    }
  }

  /**
   * A gauged cylinder, taking its smallest diameter as unworn.
   *
   * @param pistonMm the piston's diameter; null when it was not measured
   */
  public static WornCylinder of(int cylinder, BoreProfile bore, Double pistonMm) {
    Diameter largest = bore.largest();
    double smallestMm = bore.smallest().diameterMm();
    return new WornCylinder(
        cylinder,
        largest.diameterMm(),
        smallestMm,
        largest.size().expandedUncertaintyMm(),
        smallestMm,
        pistonMm);
  }

  /** The diameter that cleans it up when the cut follows the worn bore. */
  public double neededOnWornCentreMm() {
    return largestMm + expandedUncertaintyMm;
  }

  /** The diameter that cleans it up on the original centre when it is worn on one side only. */
  public double neededOnOriginalCentreMm() {
    return 2 * largestMm - unwornMm + expandedUncertaintyMm;
  }

  private static void notAbove(String what, double valueMm, double largestMm) {
    if (valueMm > largestMm) {
      throw new ImpossibleInput(
          what + " diameter " + valueMm + " mm is above the largest " + largestMm + " mm");
    }
  }
}
