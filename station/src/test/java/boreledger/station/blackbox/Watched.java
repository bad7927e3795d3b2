package boreledger.station.blackbox;

import java.time.Duration;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;

/** Waits for something that another process does and that nobody announces. */
final class Watched {
  private static final long LOOK_EVERY_NANOS = 500_000;

  private Watched() {}

  /** Whether it came true before the time was over. */
  static boolean within(Duration most, BooleanSupplier happened) {
    long deadline = System.nanoTime() + most.toNanos();
    while (!happened.getAsBoolean()) {
      if (System.nanoTime() > deadline) {
        return false;
      }
      LockSupport.parkNanos(LOOK_EVERY_NANOS);
    }
    return true;
  }
}
