package boreledger.station.audit;

import java.time.Duration;
import java.time.Instant;

/** Notices that a clock on the wall was set back, or ran ahead of the one that audits. */
final class WallWatch {
  // A rocked reading stands for the middle of its rocks, and comes after what was refused
  // meanwhile.
  private static final Duration MOST_LATE = Duration.ofMinutes(1);

  // Stations' clocks differ; by this much nobody mistakes one day's work for another's.
  private static final Duration MOST_AHEAD = Duration.ofMinutes(10);

  private final Instant latestPossible;
  private Instant latest = Instant.EPOCH;

  private WallWatch(Instant latestPossible) {
    this.latestPossible = latestPossible;
  }

  /** A clock that showed the time, up to the moment of the audit. */
  static WallWatch until(Instant now) {
    return new WallWatch(now.plus(MOST_AHEAD));
  }

  /** A recording's own clock, which may show any time. */
  static WallWatch ofRecording() {
    return new WallWatch(Instant.MAX);
  }

  void shows(long seq, Instant wall, Remarks remarks) {
    if (wall.isAfter(latestPossible)) {
      remarks.notice(seq, "the clock on the wall showed " + wall + ", which is yet to come");
      return;
    }
    if (wall.isBefore(latest.minus(MOST_LATE))) {
      remarks.notice(seq, "the clock on the wall went back from " + latest + " to " + wall);
      latest = wall;
    } else if (wall.isAfter(latest)) {
      latest = wall;
    }
  }
}
