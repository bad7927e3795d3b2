package boreledger.calc.gapping;

import boreledger.calc.decision.Decision;
import boreledger.calc.decision.Limit;
import boreledger.calc.decision.State;
import boreledger.calc.ring.RingTravel;
import boreledger.calc.uncertainty.Estimate;
import java.util.Optional;

/**
 * An oil rail's gap, which is verified and not filed. With added boost it is wanted in the upper
 * half of the maker's range (common practice, no source).
 *
 * @param wanted the limits it was held against
 * @param tightest about the smallest gap wanted; null when there is no such limit
 * @param widest about the largest gap allowed; null when there is no such limit
 */
public record OilRail(GapLimits wanted, Decision tightest, Decision widest) {
  /**
   * Verifies a rail.
   *
   * @param travel the rail along its travel
   * @param limits the maker's limits
   * @param addedBoost whether the engine is boosted beyond what its maker meant
   */
  public static OilRail verify(RingTravel travel, GapLimits limits, boolean addedBoost) {
    GapLimits wanted = addedBoost ? limits.upperHalf() : limits;
    Estimate narrow = travel.coldAt(travel.tightestCold().depthMm());
    Estimate wide = travel.coldAt(travel.widestCold().depthMm());
    return new OilRail(
        wanted, decide(wanted.atTightest(), narrow), decide(wanted.atWidest(), wide));
  }

  private static Decision decide(Optional<Limit> limit, Estimate gap) {
    return limit.map(each -> each.decide(gap)).orElse(null);
  }

  /**
   * Ready, too wide, or unknown. Unknown also stands for a rail that is too tight: it is not to be
   * filed, and the decision at the tightest point says so.
   */
  public RingState state() {
    if (widest != null && widest.state() == State.BEYOND) {
      return RingState.TOO_WIDE;
    }
    boolean known = tightest != null || widest != null;
    boolean tight = tightest != null && tightest.state() == State.BEYOND;
    return known && !tight ? RingState.READY : RingState.UNKNOWN;
  }
}
