package boreledger.calc.study;

/**
 * An estimate with an interval about it that covers the true value with 95 %.
 *
 * @param estimate the middle
 * @param halfWidth Student's t times the standard uncertainty; zero or more
 */
public record Interval(double estimate, double halfWidth) {
  /** The lower end. */
  public double low() {
    return estimate - halfWidth;
  }

  /** The upper end. */
  public double high() {
    return estimate + halfWidth;
  }

  /** Whether zero lies in the interval, ends included: the estimate may be zero in truth. */
  public boolean containsZero() {
    return Math.abs(estimate) <= halfWidth;
  }
}
