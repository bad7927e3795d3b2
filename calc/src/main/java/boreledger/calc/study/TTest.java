package boreledger.calc.study;

import boreledger.calc.uncertainty.StudentT;
import java.util.Optional;

/**
 * Whether an estimate differs from zero.
 *
 * @param t estimate over its standard uncertainty
 * @param degreesOfFreedom of the standard uncertainty; 1 or more
 * @param p probability of a t this far from zero or farther, to either side, if the true value were
 *     zero; 0 to 1
 */
public record TTest(double t, int degreesOfFreedom, double p) {
  /** The test, or empty when the standard uncertainty is zero. */
  static Optional<TTest> of(double estimate, double standardUncertainty, int degreesOfFreedom) {
    if (standardUncertainty == 0) {
      return Optional.empty();
    }
    double t = estimate / standardUncertainty;
    double p = 2 * StudentT.cumulative(-Math.abs(t), degreesOfFreedom);
    return Optional.of(new TTest(t, degreesOfFreedom, p));
  }
}
