package boreledger.station.bench.model;

import boreledger.station.bench.words.BenchText;
import java.util.Locale;

/** How long ago something was, in words. */
final class Age {
  /** A value older than this, in seconds, is no longer live. */
  static final double LIVE_S = 2;

  private static final double LONGEST_IN_SECONDS_S = 120;

  private Age() {}

  static String words(double ageS) {
    if (ageS < LONGEST_IN_SECONDS_S) {
      return BenchText.AGE_SECONDS.with(String.format(Locale.ROOT, "%d", (long) ageS));
    }
    return BenchText.AGE_MINUTES.with(String.format(Locale.ROOT, "%d", (long) (ageS / 60)));
  }
}
