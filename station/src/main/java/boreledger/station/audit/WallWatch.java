package boreledger.station.audit;

import java.time.Duration;
import java.time.Instant;

/** Notices that a clock on the wall was set back. */
final class WallWatch {
  // A rocked reading stands for the middle of its rocks, and comes after what was refused
  // meanwhile.
  private static final Duration MOST_LATE = Duration.ofMinutes(1);

  private Instant latest = Instant.EPOCH;

  void shows(long seq, Instant wall, Remarks remarks) {
    if (wall.isBefore(latest.minus(MOST_LATE))) {
      remarks.notice(seq, "the clock on the wall went back from " + latest + " to " + wall);
      latest = wall;
    } else if (wall.isAfter(latest)) {
      latest = wall;
    }
  }
}
