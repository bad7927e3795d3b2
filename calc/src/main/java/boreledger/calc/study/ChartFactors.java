package boreledger.calc.study;

import boreledger.calc.input.ImpossibleInput;

/**
 * Factors of the control chart for means and ranges (ISO 7870-2), from the mean and standard
 * deviation of the range of normal readings.
 *
 * @param d2 mean range over standard deviation
 * @param a2 limits of the means, in mean ranges: 3 / (d2 root n)
 * @param d3 lower limit of the ranges, in mean ranges: 1 - 3 sd / d2, or 0 when that is below zero;
 *     the tables' capital D3
 * @param d4 upper limit of the ranges, in mean ranges: 1 + 3 sd / d2; the tables' capital D4
 */
public record ChartFactors(double d2, double a2, double d3, double d4) {
  /** The smallest subgroup with a range. */
  public static final int SMALLEST = 2;

  /** The largest subgroup in the tables; a range tells little about more readings. */
  public static final int LARGEST = 25;

  /**
   * The factors of a subgroup size.
   *
   * @param subgroupSize 2 to 25
   * @throws ImpossibleInput when it is outside
   */
  public static ChartFactors of(int subgroupSize) {
    if (subgroupSize < SMALLEST || subgroupSize > LARGEST) {
      throw new ImpossibleInput(
          "subgroup of " + subgroupSize + " readings is not of " + SMALLEST + " to " + LARGEST);
    }
    RelativeRange range = RelativeRange.of(subgroupSize);
    double spread = 3 * range.d3() / range.d2();
    return new ChartFactors(
        range.d2(),
        3 / (range.d2() * Math.sqrt(subgroupSize)),
        Math.max(0, 1 - spread),
        1 + spread);
  }
}
