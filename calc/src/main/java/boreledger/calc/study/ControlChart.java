package boreledger.calc.study;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Stability of a gauge: repeated readings of one master, a subgroup each time, on a chart for means
 * and ranges with limits from the same subgroups (ISO 7870-2).
 *
 * @param subgroupSize readings in each subgroup, 2 to 25
 * @param means the chart of the subgroups' means
 * @param ranges the chart of the subgroups' ranges
 */
public record ControlChart(int subgroupSize, Track means, Track ranges) {
  /**
   * One chart.
   *
   * @param center the mean of the points
   * @param lower the lower control limit
   * @param upper the upper control limit
   * @param points in the subgroups' order
   */
  public record Track(double center, double lower, double upper, List<Double> points) {
    /** Takes a copy of the list. */
    public Track {
      points = List.copyOf(points);
    }

    /** Which points are below the lower or above the upper limit, counted from 0. */
    public List<Integer> outside() {
      return IntStream.range(0, points.size())
          .filter(i -> points.get(i) < lower || points.get(i) > upper)
          .boxed()
          .toList();
    }
  }

  /**
   * Draws the limits.
   *
   * @param subgroups in time order, two or more, each of the same 2 to 25 readings
   * @throws ImpossibleInput when there are fewer, or they differ in size
   */
  public static ControlChart of(List<List<Double>> subgroups) {
    Require.atLeast(2, subgroups.size(), "subgroups");
    int size = subgroups.get(0).size();
    ChartFactors factors = ChartFactors.of(size);
    for (int i = 1; i < subgroups.size(); i++) {
      int other = subgroups.get(i).size();
      if (other != size) {
        throw new ImpossibleInput(
            "subgroup " + (i + 1) + " has " + other + " readings, the first has " + size);
      }
    }
    List<Sample> samples = subgroups.stream().map(Sample::of).toList();
    List<Double> means = samples.stream().map(Sample::mean).toList();
    List<Double> ranges = samples.stream().map(Sample::range).toList();
    double mean = Sample.of(means).mean();
    double range = Sample.of(ranges).mean();
    double reach = factors.a2() * range;
    return new ControlChart(
        size,
        new Track(mean, mean - reach, mean + reach, means),
        new Track(range, factors.d3() * range, factors.d4() * range, ranges));
  }

  /** Whether every mean and every range lies within its limits. */
  public boolean stable() {
    return means.outside().isEmpty() && ranges.outside().isEmpty();
  }
}
