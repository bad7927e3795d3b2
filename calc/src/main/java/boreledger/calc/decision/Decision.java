package boreledger.calc.decision;

import boreledger.calc.uncertainty.StudentT;

/**
 * A value held against a limit (ISO 14253-1, JCGM 106).
 *
 * <p>Within when the probability of keeping the limit is at least 95 %, beyond when the probability
 * of breaking it is, undecided between. For a one-sided limit that is a guard band of {@code
 * t(0.95) u}, 1.645 u with many degrees of freedom; between two limits both tails count together.
 * Without uncertainty the value alone decides, and the limit itself is within.
 *
 * @param limit the limit
 * @param valueMm the measured value in millimetres
 * @param standardUncertaintyMm its standard uncertainty in millimetres
 * @param degreesOfFreedom of that uncertainty; may be infinite
 * @param conformance the probability that the true value keeps the limit, 0 to 1
 */
public record Decision(
    Limit limit,
    double valueMm,
    double standardUncertaintyMm,
    double degreesOfFreedom,
    double conformance) {
  /** The probability on the good side that is asked for. */
  public static final double CONFIDENCE = 0.95;

  /** What can be said. */
  public State state() {
    if (conformance >= CONFIDENCE) {
      return State.WITHIN;
    }
    return 1 - conformance >= CONFIDENCE ? State.BEYOND : State.UNDECIDED;
  }

  /** How far inside a one-sided limit a value must lie to be within, in millimetres. */
  public double guardBandMm() {
    return standardUncertaintyMm * StudentT.quantile(CONFIDENCE, degreesOfFreedom);
  }
}
