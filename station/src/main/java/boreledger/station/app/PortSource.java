package boreledger.station.app;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.net.TcpAddress;
import boreledger.drivers.net.TcpLine;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.serial.SerialLine;
import boreledger.drivers.serial.SerialOpening;
import boreledger.station.gauging.GaugingEvent;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;

/** A gauge on a serial or network port. */
final class PortSource implements LiveSource {
  private final GaugeProfile gauge;
  private final String port;
  private final boolean waits;
  private final TcpAddress network;

  PortSource(LiveChoice.Gauge choice) throws FileProblem, UsageProblem {
    gauge = GaugeFiles.named(choice.gauge());
    port = choice.port();
    waits = choice.waits();
    network = port.startsWith(TcpAddress.SCHEME) ? address(port) : null;
  }

  @Override
  public GaugeProfile gauge() {
    return gauge;
  }

  @Override
  public String words() {
    return (network == null ? "serial port " : "network port ") + port;
  }

  @Override
  public double speed() {
    return 1;
  }

  @Override
  public Line open(SittingClock clock) throws LineFault {
    if (!waits) {
      return once(port, network, gauge, clock::nowTS);
    }
    return network == null
        ? SerialOpening.lasting(port, gauge.line(), clock::nowTS)
        : TcpLine.lasting(network, clock::nowTS);
  }

  /**
   * Opens the line of a port, which is not waited for when it goes.
   *
   * @throws UsageProblem if a network address cannot be one
   */
  static Line open(String port, GaugeProfile gauge, DoubleSupplier clockS)
      throws LineFault, UsageProblem {
    return once(port, port.startsWith(TcpAddress.SCHEME) ? address(port) : null, gauge, clockS);
  }

  @Override
  public Consumer<GaugingEvent> listener() {
    return event -> {};
  }

  private static Line once(
      String port, TcpAddress network, GaugeProfile gauge, DoubleSupplier clockS) throws LineFault {
    return network == null
        ? SerialLine.open(port, gauge.line(), clockS)
        : TcpLine.open(network, clockS);
  }

  private static TcpAddress address(String text) throws UsageProblem {
    try {
      return TcpAddress.parse(text);
    } catch (IllegalArgumentException e) {
      throw new UsageProblem("--port: " + e.getMessage());
    }
  }
}
