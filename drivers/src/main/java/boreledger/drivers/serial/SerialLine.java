package boreledger.drivers.serial;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.profile.LineSettings;
import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.time.Duration;
import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * A serial port, wired or Bluetooth, read by blocking reads on the caller's thread.
 *
 * <p>What the serial library does, and this class relies on (Linux, seen with pseudo-terminals; the
 * tests hold it to that):
 *
 * <ul>
 *   <li>A read gives 0 after its timeout, and -1 at once when the other end has gone or the port
 *       was closed from another thread; {@code isOpen} stays true then. Bytes that were on their
 *       way when the other end went are lost.
 *   <li>Setting a modem line on a port that has none answers false: a note, and no fault.
 *   <li>A link is followed once, when the port is looked up; so a port that comes back wants a new
 *       {@code SerialLine} from the same path.
 *   <li>An open port is locked against this program and all others.
 * </ul>
 *
 * <p>Its events are timed by the clock that it is given. After {@link #close()}, from whichever
 * thread, it is at its end.
 */
public final class SerialLine implements Line {
  private static final int BUFFER_BYTES = 4096;
  // The longest that a terminal's own timer can be told to wait, in tenths of a second a byte long.
  private static final long LONGEST_WAIT_MS = 25_500;

  private final SerialPort port;
  private final String name;
  private final DoubleSupplier clockS;
  private final List<String> notes;
  private final byte[] buffer = new byte[BUFFER_BYTES];
  private int timeoutMs;
  private volatile boolean closed;

  private SerialLine(SerialPort port, String name, DoubleSupplier clockS, List<String> notes) {
    this.port = port;
    this.name = name;
    this.clockS = clockS;
    this.notes = List.copyOf(notes);
  }

  /**
   * Opens a port and locks it against others.
   *
   * @param path any path that names a port, links included
   * @param clockS a monotonic clock in seconds, by which the events are timed
   * @throws LineFault if there is no such port, or another program has it, or it may not be opened
   */
  public static SerialLine open(String path, LineSettings settings, DoubleSupplier clockS)
      throws LineFault {
    String name = nameOf(path);
    SerialPort port = lookUp(path, name);
    PortSettings.prepare(port, settings);
    if (!port.openPort()) {
      throw new LineFault(name + ": could not be opened, " + PortFault.reason(path, port));
    }
    return new SerialLine(port, name, clockS, PortSettings.setModemLines(port, settings));
  }

  static String nameOf(String path) {
    return "serial port " + path;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public List<String> notes() {
    return notes;
  }

  @Override
  public LineEvent read(Duration timeout) throws LineFault {
    if (closed) {
      return new LineEvent.End(clockS.getAsDouble());
    }
    setTimeout(timeout);
    int count = port.readBytes(buffer, buffer.length);
    double tS = clockS.getAsDouble();
    if (count > 0) {
      return new LineEvent.Chunk(tS, Bytes.of(buffer, 0, count));
    }
    if (closed) {
      return new LineEvent.End(tS);
    }
    if (count < 0) {
      throw new LineFault(
          name + ": the gauge or its cable has gone; plug it in again, then start again to go on");
    }
    return new LineEvent.Quiet(tS);
  }

  @Override
  public void send(Bytes request) throws LineFault {
    int sent = port.writeBytes(request.toArray(), request.size());
    if (sent != request.size()) {
      throw new LineFault(name + ": could not be written to; is the gauge still connected?");
    }
  }

  @Override
  public void close() {
    closed = true;
    port.closePort();
  }

  private void setTimeout(Duration timeout) {
    int wantedMs = (int) Math.max(1, Math.min(timeout.toMillis(), LONGEST_WAIT_MS));
    if (wantedMs != timeoutMs) {
      timeoutMs = wantedMs;
      port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, wantedMs, 0);
    }
  }

  private static SerialPort lookUp(String path, String name) throws LineFault {
    try {
      return SerialPort.getCommPort(path);
    } catch (SerialPortInvalidPortException e) {
      throw new LineFault(
          name + ": there is no such port; boreledger ports lists those there are", e);
    } catch (LinkageError e) {
      throw new LineFault(
          name + ": the serial library does not load on this system, " + e.getMessage(), e);
    }
  }
}
