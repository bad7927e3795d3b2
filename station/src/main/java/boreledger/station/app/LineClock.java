package boreledger.station.app;

import java.util.function.DoubleSupplier;

/** The clock of a line that belongs to no sitting: it knows no time of day. */
final class LineClock {
  private static final double NANOS_PER_S = 1e9;

  private LineClock() {}

  /** Counts seconds from now on. */
  static DoubleSupplier fromNow() {
    long startNs = System.nanoTime();
    return () -> (System.nanoTime() - startNs) / NANOS_PER_S;
  }
}
