package boreledger.station.report;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times as a sheet shows them, such as {@code 2031-05-06 08:30 UTC}. */
final class Times {
  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm 'UTC'", Locale.ROOT).withZone(ZoneOffset.UTC);

  private Times() {}

  static String minute(Instant time) {
    return MINUTE.format(time);
  }

  /** A time as results give it, ISO 8601. */
  static String minute(String iso) {
    return minute(Instant.parse(iso));
  }
}
