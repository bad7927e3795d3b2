package boreledger.station.app;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.serial.SerialLine;
import boreledger.station.gauging.GaugingEvent;
import java.util.function.Consumer;

/** A gauge on a port. */
final class PortSource implements LiveSource {
  private final GaugeProfile gauge;
  private final String port;

  PortSource(LiveChoice.Gauge choice) throws FileProblem {
    gauge = GaugeFiles.named(choice.gauge());
    port = choice.port();
  }

  @Override
  public GaugeProfile gauge() {
    return gauge;
  }

  @Override
  public String words() {
    return "serial port " + port;
  }

  @Override
  public double speed() {
    return 1;
  }

  @Override
  public Line open(SittingClock clock) throws LineFault {
    return SerialLine.open(port, gauge.line(), clock::nowTS);
  }

  @Override
  public Consumer<GaugingEvent> listener() {
    return event -> {};
  }
}
