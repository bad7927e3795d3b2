package boreledger.station.app;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.keyboard.KeyboardLine;
import boreledger.drivers.keyboard.TypedLines;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.net.TcpAddress;
import boreledger.drivers.net.TcpLine;
import boreledger.drivers.profile.FrameSpec;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.serial.SerialLine;
import boreledger.drivers.serial.SerialOpening;
import boreledger.station.gauging.GaugingEvent;
import java.util.function.Consumer;

/** A gauge on a serial or network port, or one that types into this program's standard input. */
final class PortSource implements LiveSource {
  private static final String KEYBOARD = "keyboard";

  private final GaugeProfile gauge;
  private final String port;
  private final boolean waits;
  private final TcpAddress network;
  private final boolean typed;

  PortSource(LiveChoice.Gauge choice) throws FileProblem, UsageProblem {
    gauge = GaugeFiles.named(choice.gauge());
    port = choice.port();
    waits = choice.waits();
    network = port.startsWith(TcpAddress.SCHEME) ? address(port) : null;
    typed = port.equals(KEYBOARD);
  }

  @Override
  public GaugeProfile gauge() {
    return gauge;
  }

  @Override
  public String words() {
    if (typed) {
      return "keyboard input";
    }
    return (network == null ? "serial port " : "network port ") + port;
  }

  @Override
  public double speed() {
    return 1;
  }

  @Override
  public Line open(SittingClock clock) throws LineFault {
    if (typed) {
      return keyboard(clock);
    } else if (network != null) {
      return waits ? TcpLine.lasting(network, clock::nowTS) : TcpLine.open(network, clock::nowTS);
    }
    return waits
        ? SerialOpening.lasting(port, gauge.line(), clock::nowTS)
        : SerialLine.open(port, gauge.line(), clock::nowTS);
  }

  @Override
  public Consumer<GaugingEvent> listener() {
    return event -> {};
  }

  private static TcpAddress address(String text) throws UsageProblem {
    try {
      return TcpAddress.parse(text);
    } catch (IllegalArgumentException e) {
      throw new UsageProblem("--port: " + e.getMessage());
    }
  }

  private Line keyboard(SittingClock clock) {
    KeyboardLine line = new KeyboardLine(ending(gauge.frame()), clock::nowTS);
    new TypedLines(System.in, line).start();
    return line;
  }

  /** What stands in the place of Enter: whatever this gauge's frames end with. */
  private static Bytes ending(FrameSpec frame) {
    if (frame instanceof FrameSpec.Delimited delimited) {
      return delimited.endsWith();
    }
    return frame instanceof FrameSpec.Fixed fixed ? fixed.endsWith() : Bytes.EMPTY;
  }
}
