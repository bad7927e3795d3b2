package boreledger.station.app;

import boreledger.drivers.keyboard.KeyboardLine;
import boreledger.drivers.keyboard.TypedLines;

/** Where the values come from that a gauge on the port {@code keyboard} types. */
@FunctionalInterface
public interface Typing {
  /** The lines of this program's standard input. */
  Typing STANDARD_INPUT = line -> new TypedLines(System.in, line).start();

  /** Brings what is typed from now on to a line that was just made. */
  void into(KeyboardLine line);
}
