package boreledger.calc.study;

import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.StudentT;
import java.util.Optional;

/**
 * The gauge's mean deviation on one reference, judged by the scatter of its own readings.
 *
 * <ul>
 *   <li>One reading: neither interval nor test.
 *   <li>Readings that all agree: an interval of no width and no test; the display may be too
 *       coarse.
 * </ul>
 *
 * @param reference the reference's certified value; its own uncertainty is not in here
 * @param deviations readings minus reference
 */
public record Bias(double reference, Sample deviations) {
  /** The mean deviation, above zero when the gauge reads too large. */
  public double amount() {
    return deviations.mean();
  }

  /** The bias with its 95 % interval; empty with one reading. */
  public Optional<Interval> interval() {
    if (deviations.count() == 1) {
      return Optional.empty();
    }
    double t = StudentT.coverageFactor(Budget.LEVEL, deviations.degreesOfFreedom());
    return Optional.of(
        new Interval(amount(), t * deviations.standardUncertaintyOfMean().orElseThrow()));
  }

  /** Whether the bias differs from zero; empty with one reading or when all agree. */
  public Optional<TTest> test() {
    return deviations.count() == 1
        ? Optional.empty()
        : TTest.of(
            amount(),
            deviations.standardUncertaintyOfMean().orElseThrow(),
            deviations.degreesOfFreedom());
  }
}
