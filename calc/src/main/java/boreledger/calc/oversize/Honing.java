package boreledger.calc.oversize;

import java.util.ArrayList;
import java.util.List;

/**
 * What honing would make of a cylinder. It is honed until its widest place cleans up, and at least
 * to the smallest bore and the smallest clearance allowed.
 *
 * @param finishedMm the diameter after honing, in millimetres
 * @param bars why that will not do; empty when it will, as far as limits are known
 */
public record Honing(double finishedMm, List<HoningBar> bars) {
  /** Takes a copy of the list. */
  public Honing {
    bars = List.copyOf(bars);
  }

  /**
   * Honing a cylinder.
   *
   * @param allowanceMm the most that honing takes off a diameter, in millimetres
   * @param limits what the bore must keep afterwards
   */
  public static Honing of(WornCylinder cylinder, double allowanceMm, HoningLimits limits) {
    double finishedMm = finishedMm(cylinder, limits);
    // The uncertainty widens the finished size but is no metal to be taken off.
    double stockMm = finishedMm - cylinder.expandedUncertaintyMm() - cylinder.smallestMm();
    List<HoningBar> bars = new ArrayList<>();
    bar(bars, HoningBar.Why.ABOVE_WEAR_LIMIT, cylinder.largestMm(), limits.wearLimitMm());
    bar(bars, HoningBar.Why.TOO_MUCH_STOCK, stockMm, allowanceMm);
    bar(bars, HoningBar.Why.ABOVE_LARGEST_BORE, finishedMm, limits.boreMaxMm());
    if (cylinder.pistonMm() != null) {
      double clearanceMm = finishedMm - cylinder.pistonMm();
      bar(bars, HoningBar.Why.TOO_MUCH_CLEARANCE, clearanceMm, limits.clearanceMaxMm());
    }
    return new Honing(finishedMm, bars);
  }

  /** Whether honing will do. */
  public boolean enough() {
    return bars.isEmpty();
  }

  private static double finishedMm(WornCylinder cylinder, HoningLimits limits) {
    double finishedMm = cylinder.neededOnWornCentreMm();
    if (limits.boreMinMm() != null) {
      finishedMm = Math.max(finishedMm, limits.boreMinMm());
    }
    if (cylinder.pistonMm() != null && limits.clearanceMinMm() != null) {
      finishedMm = Math.max(finishedMm, cylinder.pistonMm() + limits.clearanceMinMm());
    }
    return finishedMm;
  }

  private static void bar(List<HoningBar> bars, HoningBar.Why why, double valueMm, Double limitMm) {
    if (limitMm != null && valueMm > limitMm + Oversizes.LAST_DIGIT_MM) {
      bars.add(new HoningBar(why, valueMm, limitMm));
    }
  }
}
