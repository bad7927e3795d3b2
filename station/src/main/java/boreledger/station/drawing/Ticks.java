package boreledger.station.drawing;

import boreledger.station.wording.LengthFormat;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Round values along an axis: whole multiples of 1, 2 or 5 times a power of ten.
 *
 * @param values in rising order
 * @param labels as they are written, all with the same number of decimals
 */
record Ticks(List<Double> values, List<String> labels) {
  private static final List<BigDecimal> STEPS =
      List.of(BigDecimal.ONE, BigDecimal.valueOf(2), BigDecimal.valueOf(5));

  /** The finest ticks of a range that are not more than {@code most}. */
  static Ticks of(Range range, int most) {
    double span = range.high() - range.low();
    int power = (int) Math.floor(Math.log10(span / Math.max(1, most))) - 1;
    while (true) {
      for (BigDecimal factor : STEPS) {
        BigDecimal step = factor.scaleByPowerOfTen(power);
        BigDecimal first = multiple(range.low(), step, RoundingMode.CEILING);
        BigDecimal last = multiple(range.high(), step, RoundingMode.FLOOR);
        if (last.subtract(first).compareTo(BigDecimal.valueOf(most - 1L)) <= 0) {
          return of(first, last, step);
        }
      }
      power++;
    }
  }

  private static Ticks of(BigDecimal first, BigDecimal last, BigDecimal step) {
    List<Double> values = new ArrayList<>();
    List<String> labels = new ArrayList<>();
    for (BigDecimal i = first; i.compareTo(last) <= 0; i = i.add(BigDecimal.ONE)) {
      BigDecimal value = i.multiply(step).setScale(Math.max(0, step.scale()), RoundingMode.HALF_UP);
      values.add(value.doubleValue());
      labels.add(value.toPlainString().replace("-", LengthFormat.MINUS));
    }
    return new Ticks(values, labels);
  }

  private static BigDecimal multiple(double value, BigDecimal step, RoundingMode rounding) {
    return BigDecimal.valueOf(value).divide(step, 0, rounding);
  }
}
