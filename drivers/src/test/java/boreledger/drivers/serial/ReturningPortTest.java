package boreledger.drivers.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.GaugeProfiles;
import boreledger.drivers.profile.LineSettings;
import boreledger.drivers.queue.CaptureQueue;
import boreledger.drivers.queue.GaugeReader;
import boreledger.drivers.queue.QueueItem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * A cable pulled out and plugged in again and again, sometimes so that the link leads to another
 * pseudo-terminal, while another device has taken the old one. {@code -Dboreledger.reconnects=20}
 * does it less often.
 */
@Timeout(600)
@EnabledOnOs(OS.LINUX)
class ReturningPortTest {
  private static final int TIMES = Integer.getInteger("boreledger.reconnects", 200);
  private static final Duration PATIENCE = Duration.ofSeconds(20);
  private static final double LONGEST_RETURN_S = 2;
  private static final String JUNK = "9.999\n";

  private final Random random = new Random(4711);
  private final CaptureQueue queue = new CaptureQueue(64);
  private final List<LineEvent> read = new CopyOnWriteArrayList<>();
  private final List<Double> picked = new ArrayList<>();
  private final List<Bytes> rejected = new ArrayList<>();

  @TempDir Path folder;
  private Path decoyFolder;
  private int sent;

  @BeforeEach
  void makeRoomForTheOtherDevice() throws IOException {
    decoyFolder = Files.createDirectory(folder.resolve("other"));
  }

  /** What the line said, written down as it is read. */
  private final class Noted implements Line {
    private final Line line;

    Noted(Line line) {
      this.line = line;
    }

    @Override
    public String name() {
      return line.name();
    }

    @Override
    public LineEvent read(Duration timeout) throws LineFault {
      LineEvent event = line.read(timeout);
      read.add(event);
      return event;
    }

    @Override
    public void send(Bytes request) throws LineFault {
      line.send(request);
    }

    @Override
    public void close() {
      line.close();
    }
  }

  private Line open(PtyPair cable) throws LineFault {
    return SerialOpening.lasting(
        cable.stationEnd.toString(), LineSettings.DEFAULT, () -> System.nanoTime() * 1e-9);
  }

  @Test
  void everyFrameThatWasReadIsAReadingAndNoneIsTwice() throws Exception {
    PtyPair cable = PtyPair.in(folder);
    Gauge gauge = new Gauge(GaugeProfiles.find("ascii-line-size", List.of()), null);
    Thread reader = new GaugeReader("gap", new Noted(open(cable)), gauge, queue).start();
    int moved = 0;
    double slowestS = 0;
    sendSome(cable);
    takeUntil(item -> !picked.isEmpty());
    for (int i = 0; i < TIMES; i++) {
      Path before = cable.stationEnd.toRealPath();
      cable.pull();
      takeUntil(QueueItem.Gone.class::isInstance);
      boolean moves = random.nextBoolean();
      PtyPair decoy = moves ? PtyPair.in(decoyFolder) : null;
      cable = PtyPair.in(folder);
      moved += cable.stationEnd.toRealPath().equals(before) ? 0 : 1;
      if (moves) {
        decoy.send(JUNK.getBytes(StandardCharsets.US_ASCII));
      }
      long thereNs = System.nanoTime();
      takeUntil(QueueItem.Back.class::isInstance);
      slowestS = Math.max(slowestS, (System.nanoTime() - thereNs) * 1e-9);
      int known = picked.size();
      sendSome(cable);
      takeUntil(item -> picked.size() > known);
      if (moves) {
        decoy.close();
      }
    }
    cable.close();
    takeUntil(QueueItem.Gone.class::isInstance);
    queue.close();
    reader.join(PATIENCE.toMillis());

    assertEquals(framesRead(), picked);
    assertEquals(restsRead(), rejected);
    assertEquals(picked.stream().distinct().toList(), picked, "none twice");
    assertTrue(picked.size() > 2 * TIMES, picked.size() + " readings of " + sent + " frames");
    assertTrue(picked.stream().noneMatch(mm -> mm == 9.999), "nothing of the other device");
    assertTrue(moved >= TIMES / 4, "often enough to another terminal: " + moved);
    assertTrue(slowestS < LONGEST_RETURN_S, "back after " + slowestS + " s");
  }

  @Test
  void waitingLeavesNoFileOpenAndNoThreadBehind() throws Exception {
    PtyPair cable = PtyPair.in(folder);
    try (Line line = open(cable)) {
      long files = openFiles();
      int threads = Thread.activeCount();
      for (int i = 0; i < 5; i++) {
        cable.pull();
        readUntil(line, LineEvent.Gone.class);
        cable = PtyPair.in(folder);
        readUntil(line, LineEvent.Back.class);
      }
      assertEquals(threads, Thread.activeCount());
      // Each cable has the pipes to its socat, which the last one has as well.
      assertTrue(openFiles() <= files + 5 * 3, files + " files open, then " + openFiles());
    } finally {
      cable.close();
    }
  }

  @Test
  void portThatIsNotThereAtTheStartIsAFaultAtOnce() {
    String path = folder.resolve("none").toString();
    LineFault fault =
        assertThrows(
            LineFault.class, () -> SerialOpening.lasting(path, LineSettings.DEFAULT, () -> 0));
    assertEquals(
        "serial port " + path + ": there is no such port; boreledger ports lists those there are",
        fault.getMessage());
  }

  private static void readUntil(Line line, Class<? extends LineEvent> kind) throws LineFault {
    LineEvent event = line.read(Duration.ofMillis(100));
    while (!kind.isInstance(event)) {
      assertNotEquals(LineEvent.End.class, event.getClass());
      event = line.read(Duration.ofMillis(100));
    }
  }

  /** Two to five whole frames and now and then the beginning of one, each value sent once. */
  private void sendSome(PtyPair cable) throws IOException {
    StringBuilder text = new StringBuilder();
    int count = 2 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      sent++;
      text.append(String.format("0.%04d\n", sent));
    }
    if (random.nextBoolean()) {
      text.append("0.9");
    }
    cable.send(text.toString().getBytes(StandardCharsets.US_ASCII));
  }

  private void takeUntil(java.util.function.Predicate<QueueItem> wanted) throws Exception {
    QueueItem item;
    do {
      Optional<QueueItem> next = queue.poll(PATIENCE);
      assertTrue(next.isPresent(), "nothing came, after " + picked.size() + " readings");
      item = next.get();
      if (item instanceof QueueItem.Said said) {
        hear(said.event());
      }
    } while (!wanted.test(item));
  }

  private void hear(GaugeEvent event) {
    if (event instanceof GaugeEvent.Picks picks && picks.pick() instanceof PickEvent.Picked one) {
      picked.add(one.valueMm());
    } else if (event instanceof GaugeEvent.Bad bad) {
      rejected.add(bad.rejected().raw());
    }
  }

  /** The bytes of each connection, in order. */
  private List<String> connections() {
    List<String> texts = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    for (LineEvent event : read) {
      if (event instanceof LineEvent.Chunk chunk) {
        text.append(new String(chunk.bytes().toArray(), StandardCharsets.US_ASCII));
      } else if (event instanceof LineEvent.Gone) {
        texts.add(text.toString());
        text.setLength(0);
      }
    }
    return texts;
  }

  private List<Double> framesRead() {
    return connections().stream()
        .map(text -> text.substring(0, text.lastIndexOf('\n') + 1))
        .flatMap(text -> text.lines())
        .map(Double::valueOf)
        .toList();
  }

  private List<Bytes> restsRead() {
    return connections().stream()
        .map(text -> text.substring(text.lastIndexOf('\n') + 1))
        .filter(rest -> !rest.isEmpty())
        .map(rest -> Bytes.of(rest.getBytes(StandardCharsets.US_ASCII)))
        .toList();
  }

  private static long openFiles() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("/proc/self/fd"))) {
      return files.count();
    }
  }
}
