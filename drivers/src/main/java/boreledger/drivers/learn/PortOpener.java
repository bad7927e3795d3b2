package boreledger.drivers.learn;

import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.profile.LineSettings;

/** A port that can be opened with one setting after another. */
@FunctionalInterface
public interface PortOpener {
  /**
   * Opens it. All lines it gives are timed by one clock.
   *
   * @throws LineFault if it cannot be opened
   */
  Line open(LineSettings settings) throws LineFault;
}
