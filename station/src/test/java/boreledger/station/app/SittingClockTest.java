package boreledger.station.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.session.StoredSession;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;

class SittingClockTest {
  private static final Instant OPENED = Instant.parse("2031-05-06T08:00:00Z");
  private static final double TINY_S = 1e-9;

  private final Bench bench = new Bench();

  @Test
  void aNewSessionBeginsAtZeroAndRunsWithTheMonotonicClock() {
    SittingClock clock = SittingClock.fromNow(bench, bench::nanoTime);
    assertEquals(0, clock.nowTS());

    bench.passes(Duration.ofMillis(1500));

    assertEquals(1.5, clock.nowTS(), TINY_S);
  }

  @Test
  void aWallClockThatIsSetDuringTheSittingDoesNotMoveTheSession() {
    SittingClock clock = SittingClock.fromNow(bench, bench::nanoTime);
    bench.passes(Duration.ofSeconds(10));

    bench.isSetTo(OPENED.minus(Duration.ofHours(3)));
    bench.passes(Duration.ofSeconds(5));

    assertEquals(15, clock.nowTS(), TINY_S);
  }

  @Test
  void theMonotonicClockMayStartAnywhereEvenNearItsOverflow() {
    bench.nanos = Long.MAX_VALUE - 1;
    SittingClock clock = SittingClock.fromNow(bench, bench::nanoTime);

    bench.passes(Duration.ofSeconds(2));

    assertEquals(2, clock.nowTS(), TINY_S);
  }

  @Test
  void aMomentOfTheSessionIsTheWallsTimeNowLessWhatHasPassedSince() {
    SittingClock clock = SittingClock.fromNow(bench, bench::nanoTime);
    bench.passes(Duration.ofSeconds(10));

    assertEquals(OPENED.plusMillis(2500), clock.at(2.5));
    assertEquals(OPENED, clock.at(0));
  }

  @Test
  void aPauseIsMeasuredByTheWallClock() {
    bench.passes(Duration.ofHours(2));

    SittingClock clock = SittingClock.goingOn(stoppedAt(40), bench, bench.startedAnew()::nanoTime);

    assertEquals(7200, clock.nowTS(), TINY_S);
  }

  @Test
  void afterAPauseTheSessionGoesOnWithTheMonotonicClock() {
    bench.passes(Duration.ofHours(2));
    SittingClock clock = SittingClock.goingOn(stoppedAt(40), bench, bench::nanoTime);

    bench.passes(Duration.ofSeconds(30));

    assertEquals(7230, clock.nowTS(), TINY_S);
    assertEquals(OPENED.plusSeconds(7215), clock.at(7215));
  }

  @Test
  void aWallClockSetBackDuringThePauseLetsTheSessionGoOnWhereItStopped() {
    bench.isSetTo(OPENED.minus(Duration.ofDays(400)));

    SittingClock clock = SittingClock.goingOn(stoppedAt(40), bench, bench::nanoTime);
    assertEquals(40, clock.nowTS());
    bench.passes(Duration.ofSeconds(1));

    assertEquals(41, clock.nowTS(), TINY_S);
  }

  @Test
  void aWallClockSetBackALittleStillNeverRunsTheSessionBack() {
    bench.passes(Duration.ofSeconds(39));

    SittingClock clock = SittingClock.goingOn(stoppedAt(40), bench, bench::nanoTime);

    assertTrue(clock.nowTS() >= 40, () -> "" + clock.nowTS());
  }

  private static StoredSession stoppedAt(double lastTS) {
    SessionOpened opened =
        new SessionOpened(
            "Small engine",
            "ab",
            "cd",
            List.of(),
            Measure.BORE,
            null,
            OPENED,
            20.0,
            20.0,
            "a line",
            "0");
    return new StoredSession(
        2,
        opened,
        List.of(),
        List.of(),
        false,
        lastTS,
        OPENED.plusNanos(Math.round(lastTS * 1e9)),
        List.of(new StoredSession.Stint(0, 20.0, 20.0)),
        List.of(),
        false,
        List.of());
  }

  /** Both clocks of a machine, moved by hand. */
  private static final class Bench extends Clock {
    private Instant wall = OPENED;
    private long nanos = 123_456_789;

    void passes(Duration time) {
      wall = wall.plus(time);
      nanos += time.toNanos();
    }

    void isSetTo(Instant time) {
      wall = time;
    }

    /** The monotonic clock of another start of the machine counts from somewhere else. */
    Bench startedAnew() {
      nanos = -5;
      return this;
    }

    long nanoTime() {
      return nanos;
    }

    @Override
    public Instant instant() {
      return wall;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      throw new UnsupportedOperationException("instants need no zone");
    }
  }
}
