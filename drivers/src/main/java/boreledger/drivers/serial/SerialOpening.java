package boreledger.drivers.serial;

import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.line.Opening;
import boreledger.drivers.line.ReconnectingLine;
import boreledger.drivers.profile.LineSettings;
import java.util.Optional;
import java.util.function.DoubleSupplier;

/** Finds a port again that has gone, and opens it anew: the same device, or none. */
public final class SerialOpening implements Opening {
  private final KnownPort known;
  private final SystemPorts ports;
  private final LineSettings settings;
  private final DoubleSupplier clockS;

  SerialOpening(KnownPort known, SystemPorts ports, LineSettings settings, DoubleSupplier clockS) {
    this.known = known;
    this.ports = ports;
    this.settings = settings;
    this.clockS = clockS;
  }

  /**
   * Opens a port that is there, and waits for it whenever it goes.
   *
   * @param path any path that names a port, links included
   * @param clockS a monotonic clock in seconds, by which the events are timed
   * @throws LineFault if it is not there now, or cannot be opened
   */
  public static Line lasting(String path, LineSettings settings, DoubleSupplier clockS)
      throws LineFault {
    Line line = SerialLine.open(path, settings, clockS);
    KnownPort known = KnownPort.of(path, SystemPorts.RUNNING);
    Opening again = new SerialOpening(known, SystemPorts.RUNNING, settings, clockS);
    return new ReconnectingLine(line, again, clockS);
  }

  @Override
  public Optional<Line> tryOpen() throws LineFault {
    Optional<String> path = known.find(ports);
    return path.isEmpty()
        ? Optional.empty()
        : Optional.of(SerialLine.open(path.get(), settings, clockS));
  }
}
