package boreledger.calc.gapping;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;

/**
 * The end gap a ring should have at 20 degrees Celsius at the tightest point of its travel, and
 * where the figure comes from.
 *
 * @param targetMm in millimetres; above zero
 * @param factor gap per bore when it comes from a rule; null otherwise
 * @param origin where it comes from, in words
 * @param raise why it stands above what the origin gives; null when it does not
 */
public record GapTarget(double targetMm, Double factor, String origin, Raise raise) {
  /**
   * A target that was lifted.
   *
   * @param fromMm what it was before, in millimetres
   * @param to what it was lifted to
   */
  public record Raise(double fromMm, RaisedTo to) {}

  /** What a target was lifted to. */
  public enum RaisedTo {
    /** The top ring's target: pressure caught between the rings lifts the top one. */
    TOP_RING,
    /** The ring or engine maker's smallest gap. */
    MAKERS_SMALLEST_GAP
  }

  /** Checks the target. */
  public GapTarget {
    Require.positive("target gap", targetMm, "mm");
  }

  /**
   * A figure somebody gave.
   *
   * @param origin who, in words, such as {@code ring maker's figure}
   */
  public static GapTarget given(double targetMm, String origin) {
    return new GapTarget(targetMm, null, origin, null);
  }

  /**
   * A rule's factor times the bore.
   *
   * @param boreMm the bore in millimetres; above zero
   * @throws ImpossibleInput when the rule's ring is only verified
   */
  public static GapTarget byRule(GapRule rule, double boreMm) {
    Require.positive("bore", boreMm, "mm");
    if (rule.verifyOnly()) {
      throw new ImpossibleInput(
          "gap rule for use "
              + rule.use()
              + " and ring "
              + rule.ring()
              + " has no factor: this ring is only verified");
    }
    return new GapTarget(rule.factor() * boreMm, rule.factor(), rule.origin(), null);
  }

  /** This target for a second ring: lifted to the top ring's when it lies below. */
  public GapTarget notBelowTopRing(GapTarget topRing) {
    return atLeast(topRing.targetMm, RaisedTo.TOP_RING);
  }

  /** This target lifted to the maker's smallest gap when it lies below. */
  public GapTarget notBelowMinimum(GapLimits limits) {
    return limits.minMm() == null ? this : atLeast(limits.minMm(), RaisedTo.MAKERS_SMALLEST_GAP);
  }

  private GapTarget atLeast(double leastMm, RaisedTo to) {
    return targetMm >= leastMm
        ? this
        : new GapTarget(leastMm, factor, origin, new Raise(targetMm, to));
  }
}
