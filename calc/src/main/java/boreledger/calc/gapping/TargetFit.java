package boreledger.calc.gapping;

/** Whether a bore lets a ring keep its target at the tightest and its limit at the widest point. */
public sealed interface TargetFit {
  /**
   * Finds out.
   *
   * @param targetMm the target at the tightest point of the travel, in millimetres
   * @param spreadMm how much wider the gap is at the widest point; zero or more
   * @param limits the maker's limits
   */
  static TargetFit of(double targetMm, double spreadMm, GapLimits limits) {
    Double maxMm = limits.maxMm();
    if (maxMm == null || targetMm + spreadMm <= maxMm) {
      return new Fits(targetMm + spreadMm);
    }
    if (targetMm > maxMm) {
      return new TargetAboveMaximum(targetMm, maxMm);
    }
    Double minMm = limits.minMm();
    boolean evenAtMinimum = minMm != null && minMm + spreadMm > maxMm;
    return new BoreAtFault(targetMm, targetMm + spreadMm, maxMm, evenAtMinimum);
  }

  /**
   * Both can be kept.
   *
   * @param widestMm the gap at the widest point once the target is met, in millimetres
   */
  record Fits(double widestMm) implements TargetFit {}

  /**
   * The bore changes too much along the travel; no ring can be filed to suit it.
   *
   * @param targetMm wanted at the tightest point, in millimetres
   * @param widestMm what the gap would then be at the widest point
   * @param maxMm what is allowed there
   * @param evenAtMinimum whether it would be too wide there even with the maker's smallest gap at
   *     the tightest point
   */
  record BoreAtFault(double targetMm, double widestMm, double maxMm, boolean evenAtMinimum)
      implements TargetFit {}

  /**
   * The target itself is above the maker's largest gap, whatever the bore.
   *
   * @param targetMm the target in millimetres
   * @param maxMm the largest gap allowed
   */
  record TargetAboveMaximum(double targetMm, double maxMm) implements TargetFit {}
}
