package boreledger.drivers.learn;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.profile.LengthUnit;
import boreledger.drivers.profile.LineSettings;
import boreledger.drivers.profile.LineSettings.Parity;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An invented gauge at a port, and the person who does what the prompt says. A port that is set as
 * the gauge is gives its bytes; another baud gives noise, and eight data bits for seven give the
 * parity as the eighth. It waits for nothing: its clock moves with what is asked of it.
 */
final class GaugeAtPort implements PortOpener, PortPrompt {
  private static final Pattern WISH = Pattern.compile("Set the gauge to (\\S+) mm.*");

  final List<String> said = new ArrayList<>();
  final List<LineSettings> opened = new ArrayList<>();
  private final InventedGauge gauge;
  private final LineSettings real;
  private Bytes pending = Bytes.EMPTY;
  private LineSettings now;
  private double tS;
  private int sequence;
  private int open;

  GaugeAtPort(InventedGauge gauge, LineSettings real) {
    this.gauge = gauge;
    this.real = real;
  }

  int linesLeftOpen() {
    return open;
  }

  long presses() {
    return said.stream().filter(line -> WISH.matcher(line).matches()).count();
  }

  @Override
  public void say(String line) {
    said.add(line);
    Matcher wish = WISH.matcher(line);
    if (wish.matches()) {
      Reading reading = gauge.set(new BigDecimal(wish.group(1)), LengthUnit.MM);
      pending = heard(gauge.wire().frame(reading.sent(sequence++, 7 * sequence % 256)));
    }
  }

  private Bytes heard(byte[] frame) {
    byte[] bytes = frame.clone();
    for (int i = 0; i < bytes.length; i++) {
      if (now.baud() != real.baud()) {
        bytes[i] = (byte) (0x80 | bytes[i] * 37 + i);
      } else if (real.dataBits() == 7 && now.dataBits() == 8) {
        boolean odd = Integer.bitCount(bytes[i]) % 2 == 1;
        bytes[i] |= (byte) (odd == (real.parity() == Parity.EVEN) ? 0x80 : 0);
      }
    }
    boolean deaf = now.baud() > 4 * real.baud();
    return deaf ? Bytes.EMPTY : Bytes.of(bytes);
  }

  @Override
  public Line open(LineSettings settings) {
    now = settings;
    opened.add(settings);
    open++;
    return new Line() {
      @Override
      public String name() {
        return "a port";
      }

      @Override
      public LineEvent read(Duration timeout) {
        if (pending.size() == 0) {
          tS += timeout.toMillis() / 1000.0;
          return new LineEvent.Quiet(tS);
        }
        tS += 0.8;
        LineEvent chunk = new LineEvent.Chunk(tS, pending);
        pending = Bytes.EMPTY;
        return chunk;
      }

      @Override
      public void send(Bytes request) throws LineFault {
        throw new LineFault("nothing is asked of this gauge");
      }

      @Override
      public void close() {
        open--;
      }
    };
  }
}
