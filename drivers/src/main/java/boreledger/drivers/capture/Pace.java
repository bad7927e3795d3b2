package boreledger.drivers.capture;

import boreledger.drivers.line.LineFault;
import java.time.Duration;
import java.util.function.DoubleSupplier;

/** How fast a capture is played. */
public interface Pace {
  /** As fast as it is read: no waiting at all. */
  Pace AT_ONCE =
      new Pace() {
        @Override
        public boolean waitUntil(double tS, Duration timeout) {
          return true;
        }

        @Override
        public double nowTS() {
          return 0;
        }
      };

  /**
   * Waits until a moment of the capture has come.
   *
   * @param tS the moment, in seconds since the capture's start
   * @param timeout how long to wait at most
   * @return whether it has come
   * @throws LineFault if the waiting was interrupted
   */
  boolean waitUntil(double tS, Duration timeout) throws LineFault;

  /** The moment of the capture that has come, in seconds since its start. */
  double nowTS();

  /**
   * Its own speed times a factor.
   *
   * @param speed how many seconds of the capture pass in one second; above zero
   * @param clockS a monotonic clock in seconds; its present reading is the capture's start
   * @param sleeper what waits
   */
  static Pace times(double speed, DoubleSupplier clockS, Sleeper sleeper) {
    return new TimedPace(speed, clockS, sleeper);
  }

  /** Something that lets time pass. */
  @FunctionalInterface
  interface Sleeper {
    /** Lets a time pass. */
    void sleep(Duration time) throws InterruptedException;
  }
}
