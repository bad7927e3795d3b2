package boreledger.calc.fit;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.util.OptionalDouble;

/**
 * The least-squares line through pairs of numbers.
 *
 * <ul>
 *   <li>Two pairs: the line goes through both; nothing can be said about the scatter.
 *   <li>Three or more: the scatter about the line, with n - 2 degrees of freedom, gives standard
 *       uncertainties (JCGM 100:2008, H.3).
 * </ul>
 *
 * @param slope y per x
 * @param meanX mean of all x
 * @param meanY mean of all y; the line goes through both means
 * @param squaresX sum of squares of x about their mean; above zero
 * @param residualSquares sum of squares of y about the line
 * @param pairs how many; 2 or more
 */
public record StraightLine(
    double slope, double meanX, double meanY, double squaresX, double residualSquares, int pairs) {

  /**
   * Fits a line.
   *
   * @param x finite numbers, not all equal
   * @param y as many finite numbers
   * @throws ImpossibleInput when there are fewer than two pairs, unlike many x and y, or all x are
   *     equal
   */
  public static StraightLine through(double[] x, double[] y) {
    Require.atLeast(2, x.length, "points of a line");
    if (x.length != y.length) {
      throw new ImpossibleInput(x.length + " x and " + y.length + " y given for a line");
    }
    double meanX = mean(x);
    double meanY = mean(y);
    double xx = 0;
    double xy = 0;
    for (int i = 0; i < x.length; i++) {
      xx += (x[i] - meanX) * (x[i] - meanX);
      xy += (x[i] - meanX) * (y[i] - meanY);
    }
    if (xx == 0) {
      throw new ImpossibleInput("all points of a line are at x " + x[0]);
    }
    double slope = xy / xx;
    double squares = 0;
    for (int i = 0; i < x.length; i++) {
      double off = y[i] - meanY - slope * (x[i] - meanX);
      squares += off * off;
    }
    return new StraightLine(slope, meanX, meanY, xx, squares, x.length);
  }

  /** The line's y at an x. */
  public double at(double x) {
    return meanY + slope * (x - meanX);
  }

  /** Degrees of freedom of the scatter; 0 with two pairs. */
  public int degreesOfFreedom() {
    return pairs - 2;
  }

  /** Standard deviation of y about the line; empty with two pairs. */
  public OptionalDouble residualStandardDeviation() {
    return degreesOfFreedom() == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.sqrt(residualSquares / degreesOfFreedom()));
  }

  /** Standard uncertainty of the slope from the scatter; empty with two pairs. */
  public OptionalDouble slopeStandardUncertainty() {
    return scaled(1 / Math.sqrt(squaresX));
  }

  /** Standard uncertainty of the line's y at an x from the scatter; empty with two pairs. */
  public OptionalDouble standardUncertaintyAt(double x) {
    double away = x - meanX;
    return scaled(Math.sqrt(1.0 / pairs + away * away / squaresX));
  }

  private OptionalDouble scaled(double factor) {
    OptionalDouble scatter = residualStandardDeviation();
    return scatter.isEmpty() ? scatter : OptionalDouble.of(factor * scatter.getAsDouble());
  }

  /** The mean, corrected by what rounding left over. */
  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += Require.finite("coordinate of a point", value, "");
    }
    double mean = sum / values.length;
    double left = 0;
    for (double value : values) {
      left += value - mean;
    }
    return mean + left / values.length;
  }
}
