package boreledger.drivers.framer;

import static boreledger.drivers.framer.Wire.ascii;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.FrameSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * A framer that lives on time has a contract of its own: chunks are bursts, each at one moment; how
 * a burst is shared out between chunks less than the silence apart, and whether the line is said to
 * be quiet in between, changes no frame.
 */
class SilenceFramerTest {
  private static final int SEEDS = 300;
  private static final FrameSpec SPEC = new FrameSpec.Silence(20, 4);

  private static LineEvent.Chunk chunk(double tS, String text) {
    return new LineEvent.Chunk(tS, ascii(text));
  }

  private static List<FrameEvent> feed(Framer framer, List<LineEvent> line) {
    return line.stream().flatMap(event -> framer.feed(event).stream()).toList();
  }

  private static List<String> cut(LineEvent... line) {
    return words(feed(Framers.of(SPEC), List.of(line)));
  }

  private static List<String> words(List<FrameEvent> events) {
    return events.stream()
        .map(e -> (e instanceof FrameEvent.Damage d ? d.why() : "frame") + " " + e.tS())
        .toList();
  }

  @Test
  void picturedStreamIsCutAsPictured() {
    List<FrameEvent> events =
        feed(
            Framers.of(SPEC),
            List.of(
                chunk(1.000, "12"),
                chunk(1.004, "34"),
                chunk(1.024, "5"),
                chunk(1.500, "66666"),
                new LineEvent.End(2)));
    assertEquals(
        List.of(
            new FrameEvent.Frame(1.004, ascii("1234"), ascii("1234")),
            new FrameEvent.Frame(1.024, ascii("5"), ascii("5")),
            new FrameEvent.Damage(1.5, ascii("66666"), "longer than 4 bytes without a silence")),
        events);
  }

  @Test
  void quietLineBringsTheFrameOutAtOnce() {
    Framer framer = Framers.of(SPEC);
    assertEquals(List.of(), framer.feed(chunk(1, "12")));
    assertEquals(List.of(), framer.feed(new LineEvent.Quiet(1.019)));
    assertEquals(List.of("frame 1.0"), words(framer.feed(new LineEvent.Quiet(1.020))));
    assertEquals(List.of(), framer.feed(new LineEvent.Quiet(1.040)));
  }

  @Test
  void orderlyEndIsSilence() {
    assertEquals(List.of("frame 1.0"), cut(chunk(1, "12"), new LineEvent.End(1)));
  }

  @Test
  void lineThatBreaksInAFrameMakesItDamage() {
    assertEquals(
        List.of("the line broke before the silence that ends a frame 1.0"),
        cut(chunk(1, "12"), new LineEvent.Cut(1.01)));
    assertEquals(List.of("frame 1.0"), cut(chunk(1, "12"), new LineEvent.Cut(1.02)));
  }

  @Test
  void frameOfTheLargestSizeIsWhole() {
    assertEquals(
        List.of("frame 1.0", "longer than 4 bytes without a silence 2.0"),
        cut(chunk(1, "1234"), chunk(2, "12345"), new LineEvent.End(3)));
  }

  @Test
  void silenceAfterTooLongAFrameEndsTheDamage() {
    String most = "x".repeat(SilenceFramer.MOST_DAMAGE);
    assertEquals(
        List.of(
            "longer than 4 bytes without a silence 1.0",
            "discarded until the next silence 1.01",
            "frame 1.1"),
        cut(chunk(1, most), chunk(1.01, "y"), chunk(1.1, "12"), new LineEvent.End(2)));
  }

  @Test
  void lineThatIsNeverSilentFillsNoMemory() {
    Framer framer = Framers.of(SPEC);
    Bytes junk = ascii("x".repeat(1000));
    long held = 0;
    for (int i = 0; i < 20_000; i++) {
      held += junk.size();
      for (FrameEvent event : framer.feed(new LineEvent.Chunk(i * 0.001, junk))) {
        assertTrue(event.raw().size() <= SilenceFramer.MOST_DAMAGE);
        held -= event.raw().size();
      }
      assertTrue(held <= SilenceFramer.MOST_DAMAGE);
    }
  }

  /** Bursts 20 to 120 ms apart, some of them longer than a frame may be. */
  private static List<LineEvent.Chunk> bursts(Random random) {
    List<LineEvent.Chunk> bursts = new ArrayList<>();
    double tS = 0;
    for (int i = 0; i < 20; i++) {
      tS += 0.02 + random.nextInt(100) / 1000.0;
      byte[] bytes = new byte[1 + random.nextInt(6)];
      random.nextBytes(bytes);
      bursts.add(new LineEvent.Chunk(tS, Bytes.of(bytes)));
    }
    return bursts;
  }

  /** The burst's bytes one by one or in pieces, at its moment, with quiet moments before it. */
  private static List<LineEvent> cut(List<LineEvent.Chunk> bursts, Random random) {
    List<LineEvent> line = new ArrayList<>();
    double lastS = 0;
    for (LineEvent.Chunk burst : bursts) {
      for (double tS = lastS + 0.013; tS < burst.tS(); tS += 0.013) {
        line.add(new LineEvent.Quiet(tS));
      }
      for (int from = 0; from < burst.bytes().size(); ) {
        int to = Math.min(burst.bytes().size(), from + random.nextInt(3));
        line.add(new LineEvent.Chunk(burst.tS(), burst.bytes().slice(from, to)));
        from = to;
      }
      lastS = burst.tS();
    }
    line.add(new LineEvent.End(lastS));
    return line;
  }

  @Test
  void everyBurstIsOneEventHoweverItIsCut() {
    int damaged = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      List<LineEvent.Chunk> bursts = bursts(new Random(seed));
      List<LineEvent> whole = new ArrayList<>(bursts);
      whole.add(new LineEvent.End(bursts.get(19).tS()));
      List<FrameEvent> events = feed(Framers.of(SPEC), whole);
      assertEquals(
          bursts.stream().map(LineEvent.Chunk::bytes).toList(),
          events.stream().map(FrameEvent::raw).toList(),
          "seed " + seed);
      assertEquals(events, feed(Framers.of(SPEC), cut(bursts, new Random(seed))), "seed " + seed);
      damaged += events.stream().anyMatch(FrameEvent.Damage.class::isInstance) ? 1 : 0;
    }
    assertTrue(damaged > 0);
  }

  @Test
  void burstsLessThanTheSilenceApartAreOneFrame() {
    assertEquals(
        List.of("frame 1.03"),
        cut(
            chunk(1, "1"),
            chunk(1.015, "2"),
            new LineEvent.Quiet(1.02),
            chunk(1.03, "3"),
            new LineEvent.End(1.03)));
  }

  @Test
  void emptyChunkIsStillSilence() {
    assertEquals(List.of("frame 1.0"), cut(chunk(1, "1"), chunk(1.015, ""), chunk(1.02, "")));
  }
}
