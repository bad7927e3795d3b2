package boreledger.calc.study;

/**
 * One source of variation in an analysis of variance.
 *
 * @param amount its sum of squares; zero or more
 * @param degreesOfFreedom its degrees of freedom; 1 or more
 */
public record SumOfSquares(double amount, int degreesOfFreedom) {
  /** Amount per degree of freedom. */
  public double meanSquare() {
    return amount / degreesOfFreedom;
  }

  /** Both sources taken as one. */
  public SumOfSquares pooledWith(SumOfSquares other) {
    return new SumOfSquares(amount + other.amount, degreesOfFreedom + other.degreesOfFreedom);
  }
}
