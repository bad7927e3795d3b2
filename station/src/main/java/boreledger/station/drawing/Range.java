package boreledger.station.drawing;

import java.util.Collection;
import java.util.List;

/** What an axis spans, low end first; never empty. */
record Range(double low, double high) {
  /**
   * The span of some values.
   *
   * @param least how wide it is made at least, about its middle; above zero
   */
  static Range of(Collection<Double> values, double least) {
    double low = values.stream().mapToDouble(each -> each).min().orElse(0);
    double high = values.stream().mapToDouble(each -> each).max().orElse(0);
    double missing = Math.max(0, least - (high - low)) / 2;
    return new Range(low - missing, high + missing);
  }

  /**
   * The span of some values, with those marks that do not lie so far away that nothing could be
   * told apart any more; of the marks alone while there are no values.
   *
   * @param least how wide it is made at least, about its middle; above zero
   * @param times how wide it may become for the marks, in times of what the values want
   */
  static Range of(Collection<Double> values, List<Double> marks, double least, double times) {
    return values.isEmpty() ? of(marks, least) : of(values, least).reaching(marks, times);
  }

  private Range reaching(List<Double> marks, double times) {
    double limit = (times - 1) * (high - low);
    double newLow = low;
    double newHigh = high;
    for (double mark : marks) {
      if (mark < low && low - mark <= limit) {
        newLow = Math.min(newLow, mark);
      } else if (mark > high && mark - high <= limit) {
        newHigh = Math.max(newHigh, mark);
      }
    }
    return new Range(newLow, newHigh);
  }

  /** The span with a share of it added at both ends. */
  Range widened(double share) {
    double more = share * (high - low);
    return new Range(low - more, high + more);
  }

  boolean has(double value) {
    return value >= low && value <= high;
  }

  /** How far along a value lies, 0 at the low end and 1 at the high end. */
  double share(double value) {
    return (value - low) / (high - low);
  }
}
