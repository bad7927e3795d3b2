package boreledger.drivers.capture;

import java.time.Duration;

/** The running machine's monotonic clock. */
final class SystemClock implements Pace.Clock {
  @Override
  public double nowS() {
    return System.nanoTime() * 1e-9;
  }

  @Override
  public void sleep(Duration time) throws InterruptedException {
    // Rounded up, so that what was waited for is due on waking.
    Thread.sleep(time.plusNanos(999_999).toMillis());
  }
}
