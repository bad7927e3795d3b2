package boreledger.calc.study;

import java.util.Optional;
import org.apache.commons.statistics.distribution.FDistribution;

/**
 * Whether one source of variation stands out of another.
 *
 * @param f ratio of the mean squares; zero or more
 * @param p probability of this ratio or a larger one if there were no such effect, 0 to 1
 */
public record FTest(double f, double p) {
  /**
   * Compares mean squares.
   *
   * @return the test, or empty when the mean square of the error is zero
   */
  public static Optional<FTest> of(SumOfSquares effect, SumOfSquares error) {
    if (error.meanSquare() == 0) {
      return Optional.empty();
    }
    double f = effect.meanSquare() / error.meanSquare();
    FDistribution distribution =
        FDistribution.of(effect.degreesOfFreedom(), error.degreesOfFreedom());
    return Optional.of(new FTest(f, distribution.survivalProbability(f)));
  }
}
