package boreledger.station.bench.ledger;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Points in time as the wall clock of a zone shows them. */
record Moments(ZoneId zone) {
  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
  private static final DateTimeFormatter SECOND =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  /** Such as {@code 2031-05-06 08:00}. */
  String minute(Instant instant) {
    return MINUTE.format(instant.atZone(zone));
  }

  /** Such as {@code 08:00:12}. */
  String second(Instant instant) {
    return SECOND.format(instant.atZone(zone));
  }
}
