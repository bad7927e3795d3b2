package boreledger.drivers.serial;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.profile.LineSettings;
import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;

/**
 * A serial port, wired or Bluetooth, read by blocking reads on the caller's thread.
 *
 * <p>What the serial library does, and this class relies on (Linux, seen with pseudo-terminals): a
 * read gives 0 after its timeout, and -1 at once when the other end has gone or the port was closed
 * from another thread; {@code isOpen} stays true then. Setting a modem line on a port that has none
 * answers false, which is a note and no fault. A link is followed once, when the port is looked up;
 * so a port that comes back wants a new {@code SerialLine} from the same path.
 */
public final class SerialLine implements Line {
  private static final int BUFFER_BYTES = 4096;

  private final SerialPort port;
  private final String name;
  private final DoubleSupplier clockS;
  private final List<String> notes;
  private final byte[] buffer = new byte[BUFFER_BYTES];
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
    String name = "serial port " + path;
    SerialPort port = lookUp(path, name);
    port.setComPortParameters(
        settings.baud(),
        settings.dataBits(),
        stopBits(settings.stopBits()),
        parity(settings.parity()));
    port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
    if (!port.openPort()) {
      throw new LineFault(name + ": could not be opened, " + PortFault.reason(path, port));
    }
    return new SerialLine(port, name, clockS, modemLines(port, settings));
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
    port.setComPortTimeouts(
        SerialPort.TIMEOUT_READ_SEMI_BLOCKING, (int) Math.max(1, timeout.toMillis()), 0);
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

  private static SerialPort lookUp(String path, String name) throws LineFault {
    try {
      return SerialPort.getCommPort(path);
    } catch (SerialPortInvalidPortException e) {
      throw new LineFault(
          name + ": there is no such port; boreledger ports lists those there are", e);
    }
  }

  private static List<String> modemLines(SerialPort port, LineSettings settings) {
    List<String> notes = new ArrayList<>();
    if (!(settings.dtr() ? port.setDTR() : port.clearDTR())) {
      notes.add("the port has no DTR line to set");
    }
    if (!(settings.rts() ? port.setRTS() : port.clearRTS())) {
      notes.add("the port has no RTS line to set");
    }
    return notes;
  }

  private static int parity(LineSettings.Parity parity) {
    return switch (parity) {
      case NONE -> SerialPort.NO_PARITY;
      case EVEN -> SerialPort.EVEN_PARITY;
      case ODD -> SerialPort.ODD_PARITY;
      case MARK -> SerialPort.MARK_PARITY;
      case SPACE -> SerialPort.SPACE_PARITY;
    };
  }

  private static int stopBits(LineSettings.StopBits stopBits) {
    return switch (stopBits) {
      case ONE -> SerialPort.ONE_STOP_BIT;
      case ONE_AND_A_HALF -> SerialPort.ONE_POINT_FIVE_STOP_BITS;
      case TWO -> SerialPort.TWO_STOP_BITS;
    };
  }
}
