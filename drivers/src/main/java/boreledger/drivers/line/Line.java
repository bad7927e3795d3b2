package boreledger.drivers.line;

import java.time.Duration;
import java.util.List;

/**
 * Where bytes come from: a serial port, a Bluetooth serial port, a capture file, the practice
 * gauge.
 *
 * <p>One thread reads. {@link #close()} may be called from any thread; the reader then gets {@link
 * LineEvent.End}.
 */
public interface Line extends AutoCloseable {
  /** What a person would call it, such as {@code serial port /dev/ttyUSB0}. */
  String name();

  /**
   * Waits for the next event.
   *
   * @param timeout how long to wait at most before answering {@link LineEvent.Quiet}; positive
   * @throws LineFault if the line broke; the line is then of no more use and wants closing
   */
  LineEvent read(Duration timeout) throws LineFault;

  /**
   * Asks the gauge for something, such as a reading now.
   *
   * @throws LineFault if the line broke or cannot be written to
   */
  void send(Bytes request) throws LineFault;

  /** Whether {@link #send} can reach anybody at all; a keyboard, for one, only speaks. */
  default boolean canBeAsked() {
    return true;
  }

  /** Things worth telling about the opened line that are no faults, such as no modem lines. */
  default List<String> notes() {
    return List.of();
  }

  @Override
  void close();
}
