package boreledger.calc.study;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.util.Arrays;
import java.util.Collection;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Descriptive statistics of repeated readings.
 *
 * <p>Mean and sum of squares are found in two passes over the readings less the first of them, so
 * that digits survive when the readings are large and close together.
 *
 * <ul>
 *   <li>One reading: no standard deviation.
 *   <li>Equal readings: the standard deviation is zero.
 * </ul>
 *
 * @param count how many readings; 1 or more
 * @param mean their arithmetic mean
 * @param squares sum of squares about the mean; zero or more
 * @param smallest the smallest reading
 * @param largest the largest reading
 */
public record Sample(int count, double mean, double squares, double smallest, double largest) {
  /**
   * Describes readings.
   *
   * @param readings one or more finite numbers
   * @throws ImpossibleInput when there are none, or one is not finite
   */
  public static Sample of(double... readings) {
    Require.atLeast(1, readings.length, "readings");
    for (double reading : readings) {
      Require.finite("reading", reading, "");
    }
    // The sums of a stream are compensated, which a thousand equal steps need.
    double first = readings[0];
    double offset = sum(readings, reading -> reading - first) / readings.length;
    double squares =
        sum(readings, reading -> (reading - first - offset) * (reading - first - offset));
    double smallest = Arrays.stream(readings).min().orElseThrow();
    double largest = Arrays.stream(readings).max().orElseThrow();
    return new Sample(readings.length, first + offset, squares, smallest, largest);
  }

  /**
   * Describes readings.
   *
   * @param readings one or more finite numbers
   * @throws ImpossibleInput when there are none, or one is not finite
   */
  public static Sample of(Collection<Double> readings) {
    return of(readings.stream().mapToDouble(Double::doubleValue).toArray());
  }

  /** Largest minus smallest reading. */
  public double range() {
    return largest - smallest;
  }

  /** Degrees of freedom of the standard deviation, count - 1. */
  public int degreesOfFreedom() {
    return count - 1;
  }

  /** The experimental standard deviation (JCGM 100:2008, 4.2.2); empty with one reading. */
  public OptionalDouble standardDeviation() {
    return count == 1
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.sqrt(squares / degreesOfFreedom()));
  }

  /** The standard uncertainty of the mean (JCGM 100:2008, 4.2.3); empty with one reading. */
  public OptionalDouble standardUncertaintyOfMean() {
    return count == 1
        ? OptionalDouble.empty()
        : OptionalDouble.of(standardDeviation().getAsDouble() / Math.sqrt(count));
  }

  private static double sum(double[] readings, DoubleUnaryOperator term) {
    return Arrays.stream(readings).map(term).sum();
  }
}
