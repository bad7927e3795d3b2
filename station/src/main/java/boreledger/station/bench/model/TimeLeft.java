package boreledger.station.bench.model;

import boreledger.station.bench.words.BenchText;
import java.util.OptionalDouble;

/** How long is left, in words: in minutes, and from 90 minutes on in hours and minutes. */
final class TimeLeft {
  private static final double S_PER_MIN = 60;
  private static final int LONGEST_IN_MINUTES = 90;

  private TimeLeft() {}

  /** Such as {@code about 12 min left}; empty when it is not known. */
  static String words(OptionalDouble leftS) {
    if (leftS.isEmpty()) {
      return "";
    }
    if (leftS.getAsDouble() < S_PER_MIN) {
      return BenchText.LEFT_SHORT.with();
    }
    long minutes = Math.round(leftS.getAsDouble() / S_PER_MIN);
    return minutes < LONGEST_IN_MINUTES
        ? BenchText.LEFT_MINUTES.with(Long.toString(minutes))
        : BenchText.LEFT_HOURS.with(Long.toString(minutes / 60), Long.toString(minutes % 60));
  }
}
