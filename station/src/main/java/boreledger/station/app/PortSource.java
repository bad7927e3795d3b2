package boreledger.station.app;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.keyboard.KeyboardLine;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.net.TcpAddress;
import boreledger.drivers.net.TcpLine;
import boreledger.drivers.profile.FrameSpec;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.LineSettings;
import boreledger.drivers.serial.SerialLine;
import boreledger.drivers.serial.SerialOpening;
import boreledger.station.gauging.GaugingEvent;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;

/** A gauge on a serial or network port, or one that types. */
final class PortSource implements LiveSource {
  private static final String KEYBOARD = "keyboard";
  private static final Bytes NEW_LINE = Bytes.ofHex("0a");

  private final GaugeProfile gauge;
  private final String port;
  private final boolean waits;
  private final TcpAddress network;
  private final boolean typed;
  private final Typing typing;

  PortSource(LiveChoice.Gauge choice, Typing typing) throws FileProblem, UsageProblem {
    gauge = GaugeFiles.named(choice.gauge());
    port = choice.port();
    waits = choice.waits();
    network = port.startsWith(TcpAddress.SCHEME) ? address(port, "--port") : null;
    typed = port.equals(KEYBOARD);
    this.typing = typing;
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
      return keyboard(gauge, clock::nowTS, typing);
    } else if (!waits) {
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
  static Line open(String port, GaugeProfile gauge, Typing typing, DoubleSupplier clockS)
      throws LineFault, UsageProblem {
    if (port.equals(KEYBOARD)) {
      return keyboard(gauge, clockS, typing);
    }
    TcpAddress network = port.startsWith(TcpAddress.SCHEME) ? address(port, "--port") : null;
    return once(port, network, gauge, clockS);
  }

  /**
   * Opens the line of a foot switch, which is waited for when it goes.
   *
   * @param option the option that named the port, for messages
   * @throws UsageProblem if a network address cannot be one
   */
  static Line switchLine(String port, String option, DoubleSupplier clockS)
      throws LineFault, UsageProblem {
    if (port.equals(KEYBOARD)) {
      return typed(NEW_LINE, clockS, Typing.STANDARD_INPUT);
    }
    return port.startsWith(TcpAddress.SCHEME)
        ? TcpLine.lasting(address(port, option), clockS)
        : SerialOpening.lasting(port, LineSettings.DEFAULT, clockS);
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

  /** A network address; a text that cannot be one is refused. */
  static TcpAddress address(String text, String option) throws UsageProblem {
    try {
      return TcpAddress.parse(text);
    } catch (IllegalArgumentException e) {
      throw new UsageProblem(option + ": " + e.getMessage());
    }
  }

  private static Line keyboard(GaugeProfile gauge, DoubleSupplier clockS, Typing typing) {
    return typed(ending(gauge.frame()), clockS, typing);
  }

  private static Line typed(Bytes ending, DoubleSupplier clockS, Typing typing) {
    KeyboardLine line = new KeyboardLine(ending, clockS);
    typing.into(line);
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
