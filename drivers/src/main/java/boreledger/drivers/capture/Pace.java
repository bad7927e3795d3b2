package boreledger.drivers.capture;

import java.time.Duration;

/**
 * How fast something is played, such as a capture: as fast as it is read, or in step with a clock.
 */
public final class Pace {
  private final double speed;
  private final Clock clock;

  private Pace(double speed, Clock clock) {
    this.speed = speed;
    this.clock = clock;
  }

  /** A clock that can be waited on; tests bring one of their own. */
  public interface Clock {
    /** The clock of the running machine. It counts on when the time of day is set. */
    Clock SYSTEM = new SystemClock();

    /** The time in seconds since any fixed moment; it never runs back. */
    double nowS();

    /** Waits for a time, not negative. */
    void sleep(Duration time) throws InterruptedException;
  }

  /** Every chunk at once, never a quiet moment. */
  public static Pace asFastAsRead() {
    return new Pace(Double.POSITIVE_INFINITY, Clock.SYSTEM);
  }

  /**
   * In step with the machine's clock.
   *
   * @param speed 1 as recorded, 2 twice as fast
   * @throws IllegalArgumentException if the speed is not positive and finite
   */
  public static Pace times(double speed) {
    return times(speed, Clock.SYSTEM);
  }

  /** In step with a given clock. */
  public static Pace times(double speed, Clock clock) {
    if (!(speed > 0) || Double.isInfinite(speed)) {
      throw new IllegalArgumentException("speed " + speed + " is not above 0 and finite");
    }
    return new Pace(speed, clock);
  }

  boolean isPaced() {
    return Double.isFinite(speed);
  }

  /** How many of the played seconds pass in a second; infinite when not in step with a clock. */
  public double speed() {
    return speed;
  }

  /** The clock's time, stretched to the played seconds. */
  public double nowS() {
    return clock.nowS() * speed;
  }

  /** Waits for some of the played seconds, or the timeout if that is shorter. */
  public void sleep(double playedS, Duration timeout) throws InterruptedException {
    Duration wanted = Duration.ofNanos((long) Math.ceil(playedS / speed * 1e9));
    clock.sleep(wanted.compareTo(timeout) < 0 ? wanted : timeout);
  }
}
