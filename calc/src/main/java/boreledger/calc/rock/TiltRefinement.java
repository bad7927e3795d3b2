package boreledger.calc.rock;

import java.util.Arrays;

/** Brings a start to its end: all samples, fine knots, the likeliest prior, the misfits out. */
final class TiltRefinement {
  private static final double KNOT_S = 0.07;
  private static final double FIRST_STEP = 1;
  private static final double NEXT_STEP = 0.35;
  private static final int ROUNDS = 10;
  private static final int STEPS = 10;

  /** After these rounds a sample once left out stays out, so that the rounds come to an end. */
  private static final int TAKE_BACK_ROUNDS = 4;

  private TiltRefinement() {}

  /**
   * Fits a record.
   *
   * @param from any fit over the same time
   * @return null when the equations are singular
   */
  static TiltFit of(TiltFit from, RockTrace trace) {
    TiltFit fit = TiltStart.transfer(from, trace, KNOT_S);
    for (int k = 0; k < ROUNDS && fit != null; k++) {
      fit = PriorSearch.around(fit, k == 0 ? FIRST_STEP : NEXT_STEP);
      boolean[] used = Rejection.revise(fit, k < TAKE_BACK_ROUNDS);
      if (Arrays.equals(used, fit.problem().used())) {
        break;
      }
      fit = TiltSolver.fit(fit, fit.problem().withUsed(used), fit.prior(), STEPS);
    }
    return fit;
  }
}
