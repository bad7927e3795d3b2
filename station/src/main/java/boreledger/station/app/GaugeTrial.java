package boreledger.station.app;

import boreledger.drivers.decoder.Rejected;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.profile.GaugeProfile;
import java.nio.file.Path;
import java.time.Duration;
import java.util.function.Consumer;

/**
 * Listens to a gauge without keeping anything, so that a person sees whether it speaks and whether
 * the profile understands it.
 */
public final class GaugeTrial implements AutoCloseable {
  private static final Duration READ_TIMEOUT = Duration.ofMillis(200);

  private final Line line;
  private final Gauge gauge;
  private volatile boolean closed;

  /** What is heard. */
  public sealed interface Heard {
    /** Bytes, as the line brought them. */
    record Raw(Bytes bytes) implements Heard {}

    /** A frame that the profile understands. */
    record Value(Sample sample) implements Heard {}

    /** Bytes that it does not. */
    record NotUnderstood(Rejected rejected) implements Heard {}
  }

  private GaugeTrial(Line line, Gauge gauge) {
    this.line = line;
    this.gauge = gauge;
  }

  /**
   * Opens the line of a gauge; one that types is heard on this program's standard input.
   *
   * @param gauge a profile's file, or the name of a built-in one
   * @throws LineFault if the port cannot be opened
   * @throws UsageProblem if a network address cannot be one
   */
  public static GaugeTrial open(Path gauge, String port)
      throws FileProblem, LineFault, UsageProblem {
    return open(gauge, port, Typing.STANDARD_INPUT);
  }

  /**
   * Opens the line of a gauge.
   *
   * @param gauge a profile's file, or the name of a built-in one
   * @param typing where the values come from that a gauge types
   * @throws LineFault if the port cannot be opened
   * @throws UsageProblem if a network address cannot be one
   */
  public static GaugeTrial open(Path gauge, String port, Typing typing)
      throws FileProblem, LineFault, UsageProblem {
    GaugeProfile profile = GaugeFiles.named(gauge);
    Line line = PortSource.open(port, profile, typing, LineClock.fromNow());
    return new GaugeTrial(line, new Gauge(profile, null));
  }

  /**
   * Listens on the calling thread until it is closed or the line ends.
   *
   * @throws LineFault if the line broke
   */
  public void listen(Consumer<Heard> listener) throws LineFault {
    LineEvent event = line.read(READ_TIMEOUT);
    while (!closed && !(event instanceof LineEvent.End)) {
      if (event instanceof LineEvent.Chunk chunk) {
        listener.accept(new Heard.Raw(chunk.bytes()));
      }
      for (GaugeEvent said : gauge.feed(event)) {
        if (said instanceof GaugeEvent.Live live) {
          listener.accept(new Heard.Value(live.sample()));
        } else if (said instanceof GaugeEvent.Bad bad) {
          listener.accept(new Heard.NotUnderstood(bad.rejected()));
        }
      }
      event = line.read(READ_TIMEOUT);
    }
  }

  /** Stops listening, from any thread. */
  @Override
  public void close() {
    closed = true;
    line.close();
  }
}
