package boreledger.drivers.line;

import java.util.Optional;

/** A way to a line that may be there or not. */
@FunctionalInterface
public interface Opening {
  /**
   * Opens the line if it is there.
   *
   * @return the line, new each time; empty while it is not there
   * @throws LineFault if something is there that may not, or cannot, be opened
   */
  Optional<Line> tryOpen() throws LineFault;
}
