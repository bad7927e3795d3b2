package boreledger.station.session;

import java.time.Duration;
import java.time.Instant;

/** The clock on the wall, for moments of a session's own clock. */
@FunctionalInterface
public interface WallClock {
  /** What the clock on the wall showed {@code tS} seconds after the session was opened. */
  Instant at(double tS);

  /**
   * The clock of a capture: its start plus the seconds since, whatever this machine's clock says.
   */
  static WallClock from(Instant started) {
    return tS -> started.plus(Duration.ofNanos(Math.round(tS * 1e9)));
  }
}
