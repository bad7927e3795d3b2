package boreledger.drivers.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.LineContract;
import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.profile.GaugeProfiles;
import boreledger.drivers.profile.LineSettings;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A real port driver over pseudo-terminals, as Linux has them. */
@EnabledOnOs(OS.LINUX)
class SerialLineTest {
  private static final Duration TIMEOUT = Duration.ofMillis(200);
  private static final long PATIENCE_S = 20;

  @TempDir Path folder;
  private PtyPair cable;

  @BeforeEach
  void layCable() throws IOException {
    cable = PtyPair.in(folder);
  }

  @AfterEach
  void takeCableAway() {
    cable.close();
  }

  private SerialLine open() throws LineFault {
    return open(cable.stationEnd);
  }

  private static SerialLine open(Path path) throws LineFault {
    return SerialLine.open(path.toString(), LineSettings.DEFAULT, () -> System.nanoTime() * 1e-9);
  }

  private static String refusal(Path path) {
    String message = assertThrows(LineFault.class, () -> open(path)).getMessage();
    String start = "serial port " + path + ": ";
    assertTrue(message.startsWith(start), message);
    return message.substring(start.length());
  }

  /** Reads until so many samples have come. */
  private static List<Double> samples(Line line, int count) throws Exception {
    Gauge gauge = new Gauge(GaugeProfiles.find("ascii-line-size", List.of()), null);
    List<Double> valuesMm = new ArrayList<>();
    long giveUp = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
    while (valuesMm.size() < count && System.nanoTime() < giveUp) {
      for (GaugeEvent event : gauge.feed(line.read(TIMEOUT))) {
        if (event instanceof GaugeEvent.Live live) {
          valuesMm.add(live.sample().valueMm());
        }
      }
    }
    return valuesMm;
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  @Test
  void framesSentByteByByteComeWhole() throws Exception {
    try (SerialLine line = open()) {
      for (byte next : ascii("+0.012 mm\r\n-1.5\r\n")) {
        cable.send(new byte[] {next});
      }
      assertEquals(List.of(0.012, -1.5), samples(line, 2));
    }
  }

  @Test
  void framesSentInABurstAllCome() throws Exception {
    StringBuilder burst = new StringBuilder();
    List<Double> expected = new ArrayList<>();
    for (int i = 0; i < 2_000; i++) {
      burst.append("0.").append(1000 + i).append("\r\n");
      expected.add((1000 + i) / 10000.0);
    }
    try (SerialLine line = open()) {
      Thread sender =
          new Thread(
              () -> {
                try {
                  cable.send(ascii(burst.toString()));
                } catch (IOException e) {
                  throw new UncheckedIOException(e);
                }
              });
      sender.start();
      assertEquals(expected, samples(line, 2_000));
      sender.join();
    }
  }

  @Test
  void everyByteValueComesThroughUnchanged() throws Exception {
    byte[] all = new byte[256];
    for (int i = 0; i < all.length; i++) {
      all[i] = (byte) i;
    }
    try (SerialLine line = open()) {
      cable.send(all);
      Bytes seen = Bytes.EMPTY;
      while (seen.size() < all.length && line.read(TIMEOUT) instanceof LineEvent.Chunk chunk) {
        seen = seen.plus(chunk.bytes());
      }
      assertEquals(Bytes.of(all), seen);
    }
  }

  @Test
  void nothingWithinTheTimeoutIsQuiet() throws Exception {
    try (SerialLine line = open()) {
      assertInstanceOf(LineEvent.Quiet.class, line.read(Duration.ofMillis(100)));
    }
  }

  @Test
  void pulledCableIsAFaultThatSaysHowToMendIt() throws Exception {
    try (SerialLine line = open()) {
      cable.pull();
      assertEquals(
          "serial port "
              + cable.stationEnd
              + ": the gauge or its cable has gone; plug it in again, then start again to go on",
          assertThrows(LineFault.class, () -> line.read(TIMEOUT)).getMessage());
    }
  }

  @Test
  void pulledCableCannotBeWrittenTo() throws Exception {
    try (SerialLine line = open()) {
      cable.pull();
      assertEquals(
          "serial port "
              + cable.stationEnd
              + ": could not be written to; is the gauge still connected?",
          assertThrows(LineFault.class, () -> line.send(Bytes.ofHex("01"))).getMessage());
    }
  }

  @Test
  void requestReachesTheGauge() throws Exception {
    try (SerialLine station = open();
        SerialLine gauge = open(cable.gaugeEnd)) {
      station.send(Bytes.ofHex("3f0d"));
      LineEvent.Chunk chunk =
          assertInstanceOf(LineEvent.Chunk.class, gauge.read(Duration.ofSeconds(5)));
      assertEquals(Bytes.ofHex("3f0d"), chunk.bytes());
    }
  }

  @Test
  void missingPortIsRefused() {
    assertEquals(
        "there is no such port; boreledger ports lists those there are",
        refusal(folder.resolve("none")));
  }

  @Test
  void portThatThisProgramHasOpenIsRefused() throws Exception {
    try (SerialLine line = open()) {
      assertEquals(
          "could not be opened, this or another program has it open; close it there first",
          refusal(cable.stationEnd));
      cable.send(ascii("1.5\n"));
      assertEquals(List.of(1.5), samples(line, 1));
    }
  }

  @Test
  void portThatAnotherProgramHasLockedIsRefused() throws Exception {
    Process other =
        new ProcessBuilder("flock", cable.stationEnd.toString(), "sh", "-c", "echo locked; cat")
            .start();
    try (BufferedReader says = new BufferedReader(new InputStreamReader(other.getInputStream()))) {
      assertEquals("locked", says.readLine());
      assertEquals(
          "could not be opened, this or another program has it open; close it there first",
          refusal(cable.stationEnd));
    } finally {
      other.destroy();
    }
  }

  @Test
  void fileThatIsNoPortIsRefused() throws Exception {
    Path file = Files.writeString(folder.resolve("file"), "no port");
    assertEquals(
        "could not be opened, system error 25; is it a serial port, and does it know these settings?",
        refusal(file));
  }

  @Test
  void modemLinesThatAreNotThereAreNotes() throws Exception {
    try (SerialLine line = open()) {
      assertEquals(
          List.of("the port has no DTR line to set", "the port has no RTS line to set"),
          line.notes());
    }
  }

  @Test
  void portThatCameBackUnderTheSameLinkIsOpenedAnew() throws Exception {
    SerialLine before = open();
    cable.pull();
    assertThrows(LineFault.class, () -> before.read(TIMEOUT));
    before.close();
    try (PtyPair other = PtyPair.in(Files.createDirectory(folder.resolve("other")))) {
      cable = PtyPair.in(folder);
      try (SerialLine line = open()) {
        other.send(ascii("9\n"));
        cable.send(ascii("1.5\n"));
        assertEquals(List.of(1.5), samples(line, 1));
      }
    }
  }

  @Test
  void openingAndClosingLeavesNothingBehind() throws Exception {
    open().close();
    long files = openFiles();
    int threads = Thread.activeCount();
    for (int i = 0; i < 20; i++) {
      try (SerialLine line = open()) {
        line.read(Duration.ofMillis(1));
      }
    }
    assertEquals(files, openFiles());
    assertEquals(threads, Thread.activeCount());
  }

  private static long openFiles() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("/proc/self/fd"))) {
      return files.count();
    }
  }

  @Test
  void eventsAreTimedByTheGivenClock() throws Exception {
    try (SerialLine line =
        SerialLine.open(cable.stationEnd.toString(), LineSettings.DEFAULT, () -> 42.5)) {
      assertEquals(42.5, line.read(Duration.ofMillis(1)).tS());
    }
  }

  @Nested
  class AsALine extends LineContract {
    @Override
    protected Line line() throws Exception {
      SerialLine line = open();
      cable.send(content().toArray());
      return line;
    }

    @Override
    protected Bytes content() {
      return Bytes.ofHex("01020304");
    }
  }
}
