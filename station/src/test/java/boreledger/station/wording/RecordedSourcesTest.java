package boreledger.station.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.gapping.GapRule;
import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.keyboard.KeyboardLine;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.pick.PlausibleWindow;
import boreledger.station.app.Replay;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.results.BudgetLine;
import boreledger.station.results.JobResults;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.results.RingResults;
import boreledger.station.session.Outcome;
import boreledger.station.session.SmallGauge;
import boreledger.station.table.Tables;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever the program writes down as an English sentence can be said in every language. */
class RecordedSourcesTest {
  private static final Path SAMPLES = Path.of("..", "sample-captures");

  private static final List<String> FRAMES =
      List.of(
          "",
          "hello",
          "1.5 cm",
          "1.5 mm",
          "9.91E37",
          "9.9E37",
          "-9.9E37",
          "1.2e999",
          "1e6",
          "1.23456789012345678901234567",
          "\u00e9",
          "a line that is longer than any gauge sends");

  private final Vocabulary german = Vocabulary.of(Locale.GERMAN);

  @TempDir Path folder;

  @Test
  void everyLineOfEveryBudget() throws Exception {
    Set<String> lines = new TreeSet<>();
    for (String bores : new String[] {"bore-rocked", "bore-press"}) {
      JobResults results = replay(bores, new ArrayList<>(), "gap-top", "gap-second");
      for (CylinderResults cylinder : results.cylinders()) {
        Stream.of(
                cylinder.bore().positions().stream().map(each -> each.budget()),
                cylinder.bore().checks().stream().map(each -> each.budget()),
                cylinder.rings().stream()
                    .map(RingResults::tightest)
                    .filter(each -> each != null)
                    .map(each -> each.budget()))
            .flatMap(all -> all)
            .flatMap(List::stream)
            .map(BudgetLine::line)
            .forEach(lines::add);
      }
    }

    assertTrue(lines.size() >= 15, lines::toString);
    assertAllKnown(lines);
  }

  @Test
  void aValueThatWasTypedInPieces() {
    KeyboardLine line = new KeyboardLine(Bytes.EMPTY, () -> 0);
    line.inPieces("-12.345");
    LineEvent.Spoilt spoilt = assertInstanceOf(LineEvent.Spoilt.class, line.read(Duration.ZERO));
    assertAllKnown(Set.of(spoilt.why()));
  }

  @Test
  void everyTextOfTheGapRulesAndTemperatures() throws Exception {
    Tables tables = Tables.of(List.of());
    Set<String> origins = new TreeSet<>();
    for (String use : tables.gapRules().uses().keySet()) {
      for (String ring : List.of("top", "second", "oil")) {
        tables.gapRules().rules().find(use, ring).map(GapRule::origin).ifPresent(origins::add);
      }
    }
    origins.add(tables.temperatures().origin());

    assertTrue(origins.size() >= 6, origins::toString);
    assertAllKnown(origins);
  }

  @Test
  void everyReasonWhyADamagedCaptureGaveNoReading() throws Exception {
    List<GaugingEvent> events = new ArrayList<>();
    replay("bore-damaged", events);
    Set<String> reasons = new HashSet<>();
    for (GaugingEvent event : events) {
      if (event instanceof GaugingEvent.Said said
          && said.outcome() instanceof Outcome.Refused refused) {
        reasons.add(refused.why());
      }
    }

    assertTrue(reasons.size() >= 3, reasons::toString);
    assertAllKnown(reasons);
  }

  @Test
  void everyReasonWhyAFrameIsNoValue() {
    SmallGauge plain = SmallGauge.size();
    SmallGauge any =
        plain.with("'^(?<value>[+-]?\\d+\\.\\d+)$'", "'^(?<value>.*?)(?: (?<unit>\\w+))?$'");
    Set<String> reasons = new TreeSet<>();
    for (String frame : FRAMES) {
      reasons.addAll(refusals(plain, frame));
      reasons.addAll(refusals(any, frame));
      reasons.addAll(
          refusals(
              plain.with(
                  "kind = \"line\"\nends_with = \"\\n\"\nmax_bytes = 32",
                  "kind = \"silence\"\nquiet_ms = 5\nmax_bytes = 8"),
              frame));
    }

    assertTrue(reasons.size() >= 10, reasons::toString);
    assertAllKnown(reasons);
  }

  private static List<String> refusals(SmallGauge profile, String frame) {
    Gauge gauge = new Gauge(profile.profile(), new PlausibleWindow(0, 5));
    List<String> reasons = new ArrayList<>();
    List<LineEvent> events =
        List.of(
            new LineEvent.Chunk(0, Bytes.of((frame + "\n").getBytes(StandardCharsets.ISO_8859_1))),
            new LineEvent.End(1));
    for (LineEvent event : events) {
      for (GaugeEvent each : gauge.feed(event)) {
        if (each instanceof GaugeEvent.Bad bad) {
          reasons.add(bad.rejected().why());
        }
      }
    }
    return reasons;
  }

  private JobResults replay(String bores, List<GaugingEvent> events, String... more)
      throws Exception {
    List<Path> captures =
        Stream.concat(Stream.of(bores), Stream.of(more))
            .map(name -> SAMPLES.resolve(name + ".capture.jsonl"))
            .toList();
    return Replay.prepare(SAMPLES.resolve("pumphouse-three.job.toml"), captures, null)
        .into(folder.resolve(bores + ".db"), events::add);
  }

  private void assertAllKnown(Set<String> sentences) {
    List<String> unknown =
        sentences.stream().filter(each -> german.recorded(each).equals(each)).toList();
    assertEquals(List.of(), unknown);
  }
}
