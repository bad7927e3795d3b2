package boreledger.drivers.capture;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** A clock that sleeping moves on at once. */
final class ManualClock implements Pace.Clock {
  final List<Duration> sleeps = new ArrayList<>();
  double nowS = 1000;

  @Override
  public double nowS() {
    return nowS;
  }

  @Override
  public void sleep(Duration time) throws InterruptedException {
    sleeps.add(time);
    nowS += time.toNanos() * 1e-9;
  }
}
