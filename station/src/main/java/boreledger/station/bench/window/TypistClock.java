package boreledger.station.bench.window;

import java.util.function.DoubleSupplier;

/**
 * A clock for keys that are seen by the screen's thread. While they are followed it goes on by
 * {@value #LONGEST_STEP_S} s at most each time it is looked at: when the thread stalls, keys come
 * late, and the stall was no pause of who typed them. It wants to be looked at with each pulse of
 * the screen then, some 60 times a second.
 */
final class TypistClock {
  static final double LONGEST_STEP_S = 0.025;

  private final DoubleSupplier realS;
  private boolean following;
  private double lastRealS;
  private double timeS;

  /**
   * A clock that follows no keys yet, and so keeps real time.
   *
   * @param realS a clock that never runs back, in seconds
   */
  TypistClock(DoubleSupplier realS) {
    this.realS = realS;
    lastRealS = realS.getAsDouble();
  }

  /** The time in seconds. */
  double look() {
    double nowS = realS.getAsDouble();
    double passedS = nowS - lastRealS;
    timeS += following ? Math.min(passedS, LONGEST_STEP_S) : passedS;
    lastRealS = nowS;
    return timeS;
  }

  /** From now on, keys are followed or not. */
  void follow(boolean now) {
    look();
    following = now;
  }
}
