package boreledger.calc.uncertainty;

import boreledger.calc.input.ImpossibleInput;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/** Student's t distribution; with infinite degrees of freedom the normal distribution. */
public final class StudentT {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

  private StudentT() {}

  /**
   * The factor that covers a share of the results between both tails, 1.96 for 0.95 and infinite
   * degrees of freedom.
   *
   * @param level the share, above 0 and below 1
   * @param degreesOfFreedom above zero, not necessarily whole, infinite allowed
   * @throws ImpossibleInput when either is outside its range
   */
  public static double coverageFactor(double level, double degreesOfFreedom) {
    return quantile((1 + level) / 2, degreesOfFreedom);
  }

  /**
   * The value that a share of the results stays below.
   *
   * @param probability the share, above 0 and below 1
   * @param degreesOfFreedom above zero, not necessarily whole, infinite allowed
   * @throws ImpossibleInput when either is outside its range
   */
  public static double quantile(double probability, double degreesOfFreedom) {
    if (!(probability > 0 && probability < 1)) {
      throw new ImpossibleInput("probability " + probability + " is not between 0 and 1");
    }
    return of(degreesOfFreedom).inverseCumulativeProbability(probability);
  }

  /**
   * The share of results below a value, 0 to 1.
   *
   * @param t the value in standard uncertainties; may be infinite
   * @param degreesOfFreedom above zero, not necessarily whole, infinite allowed
   * @throws ImpossibleInput when the degrees of freedom are not above zero
   */
  public static double cumulative(double t, double degreesOfFreedom) {
    return of(degreesOfFreedom).cumulativeProbability(t);
  }

  private static ContinuousDistribution of(double degreesOfFreedom) {
    if (!(degreesOfFreedom > 0)) {
      throw new ImpossibleInput("degrees of freedom " + degreesOfFreedom + " are not above zero");
    }
    return Double.isInfinite(degreesOfFreedom) ? NORMAL : TDistribution.of(degreesOfFreedom);
  }
}
