package boreledger.station.bench.model;

import boreledger.station.bench.words.BenchText;
import java.util.List;

/**
 * The last seconds of live values.
 *
 * @param points oldest first; thinned so that a fast gauge gives no more than a few hundred
 * @param fromS the left edge on the line's clock
 * @param spanS the width in seconds
 * @param lowMm the lower edge
 * @param highMm the upper edge; values above it are cut off
 * @param smallest the smallest plausible value since the last outcome; null when there is none
 * @param words the smallest value in words
 */
public record Trace(
    List<Point> points,
    double fromS,
    double spanS,
    double lowMm,
    double highMm,
    Point smallest,
    String words) {
  /** One value. */
  public record Point(double tS, double valueMm) {}

  /** Takes a copy of the list. */
  public Trace {
    points = List.copyOf(points);
  }

  static Trace none() {
    return new Trace(List.of(), 0, 1, 0, 1, null, BenchText.TRACE_NO_SMALLEST.with());
  }
}
