package boreledger.calc.study;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Analysis of variance of groups of readings; the groups may differ in size.
 *
 * <p>All readings are first taken less the first of them, which keeps the digits of large readings
 * that lie close together.
 *
 * @param between variation of the group means about the grand mean
 * @param within variation of the readings about their group mean
 */
public record OneWayAnova(SumOfSquares between, SumOfSquares within) {
  /**
   * Analyses groups.
   *
   * @param groups two or more, none empty, at least one with two readings or more
   * @throws ImpossibleInput when there are too few groups or readings, or one is not finite
   */
  public static OneWayAnova of(List<double[]> groups) {
    Require.atLeast(2, groups.size(), "groups");
    double[] all = groups.stream().flatMapToDouble(Arrays::stream).toArray();
    Require.atLeast(groups.size() + 1, all.length, "readings in " + groups.size() + " groups");
    double first = all[0];
    double grandMean = Sample.of(less(first, all)).mean();
    double between = 0;
    double within = 0;
    for (double[] group : groups) {
      Sample sample = Sample.of(less(first, group));
      double off = sample.mean() - grandMean;
      between += sample.count() * off * off;
      within += sample.squares();
    }
    return new OneWayAnova(
        new SumOfSquares(between, groups.size() - 1),
        new SumOfSquares(within, all.length - groups.size()));
  }

  /** Whether the groups differ; empty when no group varies within itself. */
  public Optional<FTest> test() {
    return FTest.of(between, within);
  }

  /** Standard deviation within the groups, pooled over them. */
  public double residualStandardDeviation() {
    return Math.sqrt(within.meanSquare());
  }

  private static double[] less(double first, double[] readings) {
    double[] shifted = new double[readings.length];
    for (int i = 0; i < readings.length; i++) {
      shifted[i] = readings[i] - first;
    }
    return shifted;
  }
}
