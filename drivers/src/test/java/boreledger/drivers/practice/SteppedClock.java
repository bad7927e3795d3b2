package boreledger.drivers.practice;

import boreledger.drivers.capture.Pace;
import java.time.Duration;

/** A clock that passes only while somebody sleeps on it. */
final class SteppedClock implements Pace.Clock {
  private double nowS = 500;

  @Override
  public double nowS() {
    return nowS;
  }

  @Override
  public void sleep(Duration time) {
    nowS += time.toNanos() * 1e-9;
  }
}
