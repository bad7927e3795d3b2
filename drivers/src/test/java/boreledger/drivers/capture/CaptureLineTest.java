package boreledger.drivers.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.LineContract;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CaptureLineTest {
  private static final Duration TIMEOUT = Duration.ofMillis(500);

  private final ManualClock clock = new ManualClock();

  private static Capture capture(LineEvent.Chunk... chunks) {
    CaptureHeader header =
        new CaptureHeader("g.gauge.toml", Measure.BORE, null, Instant.EPOCH, null, null);
    return new Capture("c.capture.jsonl", header, List.of(chunks));
  }

  private static LineEvent.Chunk chunk(double tS, String hex) {
    return new LineEvent.Chunk(tS, Bytes.ofHex(hex));
  }

  private static List<LineEvent> readAll(Line line) throws LineFault {
    List<LineEvent> events = new ArrayList<>();
    do {
      events.add(line.read(TIMEOUT));
    } while (!(events.get(events.size() - 1) instanceof LineEvent.End));
    return events;
  }

  @Test
  void asFastAsReadChunksComeWithoutPauses() throws Exception {
    Line line = new CaptureLine(capture(chunk(0, "01"), chunk(3600, "02")), Pace.asFastAsRead());
    assertEquals(
        List.of(chunk(0, "01"), chunk(3600, "02"), new LineEvent.End(3600)), readAll(line));
    assertEquals(new LineEvent.End(3600), line.read(TIMEOUT));
  }

  @Test
  void pacedChunksComeWhenTheyAreDueWithQuietBetween() throws Exception {
    Line line = new CaptureLine(capture(chunk(0, "01"), chunk(1.25, "02")), Pace.times(1, clock));
    List<LineEvent> events = readAll(line);
    assertEquals(chunk(0, "01"), events.get(0));
    assertEquals(0.5, assertInstanceOf(LineEvent.Quiet.class, events.get(1)).tS(), 1e-6);
    assertEquals(1.0, assertInstanceOf(LineEvent.Quiet.class, events.get(2)).tS(), 1e-6);
    assertEquals(chunk(1.25, "02"), events.get(3));
    assertEquals(new LineEvent.End(1.25), events.get(4));
    assertEquals(1001.25, clock.nowS, 1e-6);
  }

  @Test
  void doubleSpeedTakesHalfTheTime() throws Exception {
    Line line = new CaptureLine(capture(chunk(0, "01"), chunk(9, "02")), Pace.times(2, clock));
    readAll(line);
    assertEquals(1004.5, clock.nowS, 1e-6);
  }

  @Test
  void timeIsCountedFromTheFirstReading() throws Exception {
    Line line = new CaptureLine(capture(chunk(1, "01")), Pace.times(1, clock));
    clock.nowS += 100;
    assertEquals(0.5, line.read(TIMEOUT).tS(), 1e-6);
  }

  @Test
  void chunksThatAreOverdueComeAtOnce() throws Exception {
    Line line = new CaptureLine(capture(chunk(0, "01"), chunk(1, "02")), Pace.times(1, clock));
    line.read(TIMEOUT);
    clock.nowS += 5;
    assertEquals(chunk(1, "02"), line.read(TIMEOUT));
    assertEquals(List.of(), clock.sleeps);
  }

  @Test
  void interruptedThreadIsAtTheEndAndKeepsItsFlag() throws Exception {
    Line line = new CaptureLine(capture(chunk(5, "01")), Pace.times(1));
    Thread.currentThread().interrupt();
    LineEvent event = line.read(TIMEOUT);
    assertTrue(Thread.interrupted());
    assertEquals(new LineEvent.End(0), event);
  }

  @Test
  void captureCannotBeAsked() {
    Line line = new CaptureLine(capture(), Pace.asFastAsRead());
    assertEquals(
        "capture c.capture.jsonl only plays what it holds and cannot be asked for a reading",
        assertThrows(LineFault.class, () -> line.send(Bytes.ofHex("01"))).getMessage());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void speedThatIsNoneIsRefused(double speed) {
    assertEquals(
        "speed " + speed + " is not above 0 and finite",
        assertThrows(IllegalArgumentException.class, () -> Pace.times(speed)).getMessage());
  }

  @Nested
  class AsALine extends LineContract {
    @Override
    protected Line line() {
      Capture capture = capture(chunk(0, "0102"), chunk(0.01, "0304"), chunk(3600, "05"));
      return new CaptureLine(capture, Pace.times(1));
    }

    @Override
    protected Bytes content() {
      return Bytes.ofHex("01020304");
    }
  }
}
