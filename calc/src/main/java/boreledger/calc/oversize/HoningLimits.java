package boreledger.calc.oversize;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;

/**
 * What a bore must keep after honing, from the engine maker; each is null when not known.
 *
 * @param boreMinMm the smallest bore in millimetres
 * @param boreMaxMm the largest bore
 * @param wearLimitMm the largest bore that may still run
 * @param clearanceMinMm the smallest piston clearance
 * @param clearanceMaxMm the largest piston clearance
 */
public record HoningLimits(
    Double boreMinMm,
    Double boreMaxMm,
    Double wearLimitMm,
    Double clearanceMinMm,
    Double clearanceMaxMm) {
  /** A maker who says nothing. */
  public static final HoningLimits NONE = new HoningLimits(null, null, null, null, null);

  /**
   * Checks every number.
   *
   * @throws ImpossibleInput when a smallest is above its largest
   */
  public HoningLimits {
    inOrder("bore", boreMinMm, boreMaxMm);
    inOrder("clearance", clearanceMinMm, clearanceMaxMm);
    if (wearLimitMm != null) {
      Require.positive("wear limit", wearLimitMm, "mm");
    }
  }

  private static void inOrder(String what, Double minMm, Double maxMm) {
    if (minMm != null) {
      Require.notNegative("smallest " + what, minMm, "mm");
    }
    if (maxMm != null) {
      Require.positive("largest " + what, maxMm, "mm");
    }
    if (minMm != null && maxMm != null && minMm > maxMm) {
      throw new ImpossibleInput(
          "smallest " + what + " " + minMm + " mm is above the largest " + maxMm + " mm");
    }
  }
}
