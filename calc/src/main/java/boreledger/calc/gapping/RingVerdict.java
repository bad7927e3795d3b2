package boreledger.calc.gapping;

import boreledger.calc.ring.GapPoint;
import boreledger.calc.ring.RingTravel;
import boreledger.calc.uncertainty.Estimate;

/**
 * A ring's gap held against its target.
 *
 * <ul>
 *   <li>To remove: target less the gap at the tightest point, never below zero.
 *   <li>Too wide stands above the other states: filing can only widen a gap.
 *   <li>Ready when no more is to remove than the expanded uncertainty of the gap at the tightest
 *       point.
 * </ul>
 *
 * @param target what is wanted, lifted to the maker's smallest gap where it lay below
 * @param tightest where the gap is smallest, at 20 degrees Celsius
 * @param gap the gap there with its budget
 * @param widest where the gap is widest
 * @param removeMm how much is to be filed off, in millimetres; zero or more
 * @param fit whether the bore lets target and largest gap both be kept
 * @param state what is to be done
 */
public record RingVerdict(
    GapTarget target,
    GapPoint tightest,
    Estimate gap,
    GapPoint widest,
    double removeMm,
    TargetFit fit,
    RingState state) {

  /**
   * Holds a ring against its target.
   *
   * @param travel the ring along its travel
   * @param wanted the target
   * @param limits the maker's limits
   */
  public static RingVerdict of(RingTravel travel, GapTarget wanted, GapLimits limits) {
    GapTarget target = wanted.notBelowMinimum(limits);
    GapPoint tightest = travel.tightestCold();
    GapPoint widest = travel.widestCold();
    Estimate gap = travel.coldAt(tightest.depthMm());
    double removeMm = Math.max(0, target.targetMm() - tightest.gapMm());
    double spreadMm = widest.gapMm() - tightest.gapMm();
    return new RingVerdict(
        target,
        tightest,
        gap,
        widest,
        removeMm,
        TargetFit.of(target.targetMm(), spreadMm, limits),
        state(removeMm, gap, widest, limits));
  }

  private static RingState state(double removeMm, Estimate gap, GapPoint widest, GapLimits limits) {
    if (limits.maxMm() != null && widest.gapMm() > limits.maxMm()) {
      return RingState.TOO_WIDE;
    }
    return removeMm <= gap.expandedUncertaintyMm() ? RingState.READY : RingState.FILE;
  }
}
