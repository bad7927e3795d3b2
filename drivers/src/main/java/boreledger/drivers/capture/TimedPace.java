package boreledger.drivers.capture;

import boreledger.drivers.line.LineFault;
import java.time.Duration;
import java.util.function.DoubleSupplier;

/** A pace that follows a clock. */
final class TimedPace implements Pace {
  private final double speed;
  private final DoubleSupplier clockS;
  private final double startS;
  private final Sleeper sleeper;

  TimedPace(double speed, DoubleSupplier clockS, Sleeper sleeper) {
    if (!(speed > 0)) {
      throw new IllegalArgumentException("speed " + speed + " is not above zero");
    }
    this.speed = speed;
    this.clockS = clockS;
    this.startS = clockS.getAsDouble();
    this.sleeper = sleeper;
  }

  @Override
  public double nowTS() {
    return (clockS.getAsDouble() - startS) * speed;
  }

  @Override
  public boolean waitUntil(double tS, Duration timeout) throws LineFault {
    double waitS = (tS - nowTS()) / speed;
    if (waitS <= 0) {
      return true;
    }
    double longestS = timeout.toNanos() / 1e9;
    try {
      sleeper.sleep(Duration.ofNanos((long) Math.ceil(Math.min(waitS, longestS) * 1e9)));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new LineFault("the playing of a capture was interrupted", e);
    }
    return waitS <= longestS;
  }
}
