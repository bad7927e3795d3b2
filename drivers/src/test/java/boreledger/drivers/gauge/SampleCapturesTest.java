package boreledger.drivers.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import boreledger.drivers.capture.Capture;
import boreledger.drivers.capture.CaptureFiles;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.framer.FrameEvent;
import boreledger.drivers.framer.Framer;
import boreledger.drivers.framer.Framers;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.pick.PickRules;
import boreledger.drivers.profile.FrameSpec;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every sample capture: what must come out is in the {@code .expected.json} beside it, computed by
 * an independent model; and where the bytes are cut makes no difference.
 */
class SampleCapturesTest {
  private static final Path FOLDER = Path.of("..", "sample-captures");

  static List<Path> captures() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(f -> f.toString().endsWith(CaptureFiles.ENDING)).sorted().toList();
    }
  }

  private static GaugeProfile profile(Capture capture) throws FileProblem {
    return GaugeProfiles.find(capture.header().gauge(), List.of(FOLDER));
  }

  private static List<GaugeEvent> play(Capture capture, List<LineEvent.Chunk> chunks)
      throws FileProblem {
    Gauge gauge = new Gauge(profile(capture), null);
    List<GaugeEvent> events = new ArrayList<>();
    chunks.forEach(chunk -> events.addAll(gauge.feed(chunk)));
    events.addAll(gauge.feed(new LineEvent.End(chunks.get(chunks.size() - 1).tS())));
    return events;
  }

  private static List<FrameEvent> frames(Capture capture, List<LineEvent.Chunk> chunks)
      throws FileProblem {
    Framer framer = Framers.of(profile(capture).frame());
    List<FrameEvent> events = new ArrayList<>();
    chunks.forEach(chunk -> events.addAll(framer.feed(chunk)));
    events.addAll(framer.feed(new LineEvent.End(0)));
    return events;
  }

  private static List<LineEvent.Chunk> cut(LineEvent.Chunk chunk, int at) {
    Bytes bytes = chunk.bytes();
    int middle = Math.min(at, bytes.size());
    return List.of(
        new LineEvent.Chunk(chunk.tS(), bytes.slice(0, middle)),
        new LineEvent.Chunk(chunk.tS(), bytes.slice(middle, bytes.size())));
  }

  private static long count(List<GaugeEvent> events, Class<? extends GaugeEvent> kind) {
    return events.stream().filter(kind::isInstance).count();
  }

  private static List<PickEvent> picks(List<GaugeEvent> events) {
    return events.stream()
        .filter(GaugeEvent.Picks.class::isInstance)
        .map(event -> ((GaugeEvent.Picks) event).pick())
        .toList();
  }

  @Test
  void thereAreCaptures() throws Exception {
    assertTrue(captures().size() >= 11, captures().toString());
  }

  @ParameterizedTest
  @MethodSource("captures")
  void samplesAndRejectionsAreThoseOfTheModel(Path file) throws Exception {
    Capture capture = CaptureFiles.read(file);
    Path expectedFile = Path.of(file.toString().replace(CaptureFiles.ENDING, ".expected.json"));
    JsonNode expected = new ObjectMapper().readTree(expectedFile.toFile()).get("gauge_check");
    List<GaugeEvent> events = play(capture, capture.chunks());
    assertEquals(expected.get("samples").asLong(), count(events, GaugeEvent.Live.class));
    List<Double> rejectedS = new ArrayList<>();
    expected.get("rejected").forEach(node -> rejectedS.add(node.get("t").asDouble()));
    assertEquals(
        rejectedS,
        events.stream()
            .filter(GaugeEvent.Bad.class::isInstance)
            .map(event -> ((GaugeEvent.Bad) event).rejected().tS())
            .toList());
  }

  @ParameterizedTest
  @MethodSource("captures")
  void byteByByteGivesTheSameSamplesAndReadings(Path file) throws Exception {
    Capture capture = CaptureFiles.read(file);
    List<LineEvent.Chunk> bytes = new ArrayList<>();
    for (LineEvent.Chunk chunk : capture.chunks()) {
      for (int i = 0; i < chunk.bytes().size(); i++) {
        bytes.add(new LineEvent.Chunk(chunk.tS(), chunk.bytes().slice(i, i + 1)));
      }
    }
    List<GaugeEvent> whole = play(capture, capture.chunks());
    assertTrue(count(whole, GaugeEvent.Picks.class) > 0);
    assertEquals(whole, play(capture, bytes));
  }

  @ParameterizedTest
  @MethodSource("captures")
  void cutAtAnyPositionGivesTheSameFrames(Path file) throws Exception {
    Capture capture = CaptureFiles.read(file);
    List<FrameEvent> whole = frames(capture, capture.chunks());
    int longest = capture.chunks().stream().mapToInt(c -> c.bytes().size()).max().orElseThrow();
    assertTrue(whole.size() > 1 && longest > 1);
    for (int at = 1; at < longest; at++) {
      int middle = at;
      List<LineEvent.Chunk> halves =
          capture.chunks().stream().flatMap(chunk -> cut(chunk, middle).stream()).toList();
      assertEquals(whole, frames(capture, halves), "cut at " + at);
    }
  }

  @ParameterizedTest
  @MethodSource("captures")
  void allAtOnceGivesTheSameBytesInTheSameFrames(Path file) throws Exception {
    Capture capture = CaptureFiles.read(file);
    // Frames that end in silence have no end without their times.
    assumeFalse(profile(capture).frame() instanceof FrameSpec.Silence);
    Bytes all =
        capture.chunks().stream().map(LineEvent.Chunk::bytes).reduce(Bytes.EMPTY, Bytes::plus);
    List<Bytes> whole = frames(capture, capture.chunks()).stream().map(FrameEvent::raw).toList();
    List<Bytes> once =
        frames(capture, List.of(new LineEvent.Chunk(0, all))).stream()
            .map(FrameEvent::raw)
            .toList();
    assertEquals(whole, once);
  }

  @ParameterizedTest
  @MethodSource("captures")
  void keptSamplesOfAReadingGiveItsValueAgain(Path file) throws Exception {
    Capture capture = CaptureFiles.read(file);
    List<PickEvent> picks = picks(play(capture, capture.chunks()));
    assertTrue(picks.size() > 0);
    for (PickEvent pick : picks) {
      assertEquals(pick, PickRules.again(profile(capture), pick.samples()));
    }
  }
}
