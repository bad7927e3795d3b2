package boreledger.station.app;

import boreledger.station.session.StoredSession;
import boreledger.station.session.WallClock;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.function.LongSupplier;

/**
 * A session's own clock on a live line: seconds since the session was opened, running monotonically
 * while the program runs. Over a pause of the program only the clock on the wall can tell the time
 * that passed; the session's clock never runs back for it.
 */
final class SittingClock implements WallClock {
  private static final double NS_PER_S = 1e9;

  private final double startTS;
  private final double speed;
  private final long startNs;
  private final Clock wall;
  private final LongSupplier nanoTime;

  private SittingClock(double startTS, Clock wall, LongSupplier nanoTime, double speed) {
    this.startTS = startTS;
    this.speed = speed;
    this.startNs = nanoTime.getAsLong();
    this.wall = wall;
    this.nanoTime = nanoTime;
  }

  /** A clock that begins at zero. */
  static SittingClock fromNow(Clock wall, LongSupplier nanoTime) {
    return new SittingClock(0, wall, nanoTime, 1);
  }

  /** A clock that goes on in an unfinished session. */
  static SittingClock goingOn(StoredSession session, Clock wall, LongSupplier nanoTime) {
    Duration pause = Duration.between(session.lastWall(), wall.instant());
    double pauseS = Math.max(0, pause.toNanos() / NS_PER_S);
    return new SittingClock(session.lastTS() + pauseS, wall, nanoTime, 1);
  }

  /**
   * The same clock, of whose seconds several pass in one of the machine's: for practice.
   *
   * @param times how many; positive
   */
  SittingClock atSpeed(double times) {
    return new SittingClock(startTS, wall, nanoTime, times);
  }

  /** Seconds since the session was opened. */
  double nowTS() {
    return startTS + speed * (nanoTime.getAsLong() - startNs) / NS_PER_S;
  }

  @Override
  public Instant at(double tS) {
    return wall.instant().minusNanos(Math.round((nowTS() - tS) / speed * NS_PER_S));
  }
}
