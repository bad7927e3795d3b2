package boreledger.drivers.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.pick.PlausibleWindow;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class GaugeTest {
  private static GaugeProfile profile(String rule) throws FileProblem {
    String text = GaugeProfiles.find("ascii-line-deviation", List.of()).source().text();
    return GaugeProfiles.parse("p", text.replaceAll("rule = \".*\"", "rule = \"" + rule + "\""));
  }

  private static LineEvent.Chunk chunk(double tS, String text) {
    return new LineEvent.Chunk(tS, Bytes.of(text.getBytes(StandardCharsets.ISO_8859_1)));
  }

  private static List<String> words(List<GaugeEvent> events) {
    return events.stream().map(GaugeTest::words).toList();
  }

  private static String words(GaugeEvent event) {
    if (event instanceof GaugeEvent.Live live) {
      return "live " + live.sample().valueMm();
    }
    if (event instanceof GaugeEvent.Bad bad) {
      return "bad " + bad.rejected().why();
    }
    PickEvent pick = ((GaugeEvent.Picks) event).pick();
    return pick instanceof PickEvent.Picked picked
        ? "picked " + picked.valueMm()
        : "not picked " + ((PickEvent.NotPicked) pick).why();
  }

  /** Ten samples a second of a gauge tilted to and fro by 3 degrees in a bore of 96 mm. */
  private static List<LineEvent> rocking(double fromS, double squareMm) {
    List<LineEvent> events = new ArrayList<>();
    for (int i = 0; i < 80; i++) {
      double angle = Math.toRadians(3) * Math.sin(2 * Math.PI * i / 19.0);
      double valueMm = squareMm + 96 * (1 / Math.cos(angle) - 1);
      events.add(chunk(fromS + i / 10.0, String.format(Locale.ROOT, "%+.3f\n", valueMm)));
    }
    return events;
  }

  private static List<GaugeEvent> play(Gauge gauge, List<LineEvent> line) {
    return line.stream().flatMap(event -> gauge.feed(event).stream()).toList();
  }

  @Test
  void sampleComesBeforeTheReadingPickedFromIt() throws Exception {
    Gauge gauge = new Gauge(profile("press"), null);
    assertEquals(
        List.of("live 0.012", "picked 0.012", "live 0.013", "picked 0.013"),
        words(gauge.feed(chunk(1, "+0.012\n+0.013\n"))));
  }

  @Test
  void spoiltBytesAreBadThoughTheyReadAsAValue() throws Exception {
    Gauge gauge = new Gauge(profile("press"), null);
    Bytes bytes = chunk(1, "+0.012\n").bytes();
    assertEquals(
        List.of("bad came in pieces"),
        words(gauge.feed(new LineEvent.Spoilt(1, bytes, "came in pieces"))));
  }

  @Test
  void damageAndRejectedFramesAreBadAndTheNextFrameIsRead() throws Exception {
    Gauge gauge = new Gauge(profile("press"), null);
    String tooLong = "9".repeat(70);
    assertEquals(
        List.of(
            "bad \"what?\" does not match the pattern",
            "bad longer than 64 bytes without an ending",
            "live 0.012",
            "picked 0.012"),
        words(gauge.feed(chunk(1, "what?\n" + tooLong + "\n+0.012\n"))));
  }

  @Test
  void endBringsOutDamageBeforeTheLastReading() throws Exception {
    Gauge gauge = new Gauge(profile("rock"), null);
    rocking(0, 0.013).forEach(gauge::feed);
    gauge.feed(chunk(8, "+0.0"));
    List<GaugeEvent> events = gauge.feed(new LineEvent.End(8.1));
    assertEquals("bad ended without its ending", words(events.get(0)));
    PickEvent pick = ((GaugeEvent.Picks) events.get(1)).pick();
    assertEquals(0.013, assertInstanceOf(PickEvent.Picked.class, pick).valueMm(), 0.001);
    assertEquals(2, events.size());
  }

  @Test
  void rawBytesOfAllEventsAreTheBytesFed() throws Exception {
    Gauge gauge = new Gauge(profile("press"), null);
    LineEvent.Chunk fed = chunk(0, "\u00ff\u0000\n+1\nmm\n\n" + "5".repeat(90) + "\n1 in\n7");
    Bytes seen = Bytes.EMPTY;
    for (GaugeEvent event : play(gauge, List.of(fed, new LineEvent.End(1)))) {
      if (event instanceof GaugeEvent.Live live) {
        seen = seen.plus(live.sample().raw());
      } else if (event instanceof GaugeEvent.Bad bad) {
        seen = seen.plus(bad.rejected().raw());
      }
    }
    assertEquals(fed.bytes(), seen);
  }

  @Test
  void quietBringsAReadingOutAtOnceAndChangesNothingElse() throws Exception {
    List<LineEvent> spoken = new ArrayList<>(rocking(0, 0.013));
    spoken.addAll(rocking(12, 0.021));
    spoken.add(new LineEvent.End(20));
    List<LineEvent> withQuiet = new ArrayList<>();
    LineEvent last = spoken.get(0);
    for (LineEvent event : spoken) {
      for (double tS = last.tS() + 0.2; tS < event.tS(); tS += 0.2) {
        withQuiet.add(new LineEvent.Quiet(tS));
      }
      withQuiet.add(event);
      last = event;
    }
    assertTrue(withQuiet.size() > spoken.size());
    List<GaugeEvent> expected = play(new Gauge(profile("rock"), null), spoken);
    assertEquals(expected, play(new Gauge(profile("rock"), null), withQuiet));
    assertEquals(2, expected.stream().filter(GaugeEvent.Picks.class::isInstance).count());
    Gauge gauge = new Gauge(profile("rock"), null);
    rocking(0, 0.013).forEach(gauge::feed);
    assertEquals(1, gauge.feed(new LineEvent.Quiet(9.6)).size());
  }

  @Test
  void plausibleWindowReachesThePickRule() throws Exception {
    List<LineEvent> line = new ArrayList<>(rocking(0, 3.0));
    line.add(new LineEvent.End(8));
    Gauge gauge = new Gauge(profile("rock"), new PlausibleWindow(-0.5, 2));
    assertTrue(
        words(play(gauge, line)).contains("not picked the gauge was never seen rocking in a bore"));
  }
}
