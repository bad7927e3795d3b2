package boreledger.station.app;

import java.nio.file.Path;

/** What a live session listens to. */
public sealed interface LiveChoice {
  /**
   * A gauge on a line.
   *
   * @param gauge a profile's file, or the name of a built-in one
   * @param port a serial port's path, {@code tcp://host:port} for a serial device server, or {@code
   *     keyboard} for the lines of standard input
   * @param waits whether the line is waited for when it goes away, or breaks the run
   */
  record Gauge(Path gauge, String port, boolean waits) implements LiveChoice {}

  /**
   * The practice gauge.
   *
   * @param seed which invented bores, and which hand
   * @param pace how many of its seconds pass in a second; positive and finite
   */
  record Practice(long seed, double pace) implements LiveChoice {
    /** Checks the pace. */
    public Practice {
      if (!(pace > 0) || Double.isInfinite(pace)) {
        throw new IllegalArgumentException("pace " + pace + " is not above 0 and finite");
      }
    }
  }
}
