package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.truth.BoreReading;
import boreledger.station.truth.BoreTruth;
import boreledger.station.truth.CaptureText;
import boreledger.station.truth.Drift;
import boreledger.station.truth.Engine;
import boreledger.station.truth.GapSession;
import boreledger.station.truth.Noise;
import boreledger.station.truth.PressSession;
import boreledger.station.truth.PumphouseThree;
import boreledger.station.truth.Wire;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Readings that come over a line are the same as those replayed from a file. */
@EnabledOnOs(value = OS.LINUX, disabledReason = "needs pseudo terminals made by socat")
class CaptureIT {
  private final Engine engine = PumphouseThree.engine();

  /** The zero stands still, so that the time of each press does not matter. */
  private final List<PressSession.Press> presses =
      PressSession.gauge(engine, new Drift(0, 0, 100), 0, Wire.signedMm(6), new Noise(11))
          .presses();

  @TempDir Path folder;
  private LiveBench bench;

  @BeforeEach
  void setUp() {
    bench = new LiveBench(folder, engine);
  }

  @Test
  void burstsGiveTheReadingsOfTheReplay() {
    Noise noise = new Noise(12);
    assertSameAsReplay(
        (cable, bytes) -> {
          int at = 0;
          while (at < bytes.length()) {
            int end = Math.min(bytes.length(), at + noise.between(1, 60));
            cable.send(bytes.substring(at, end));
            at = end;
          }
        });
  }

  @Test
  void singleBytesGiveTheReadingsOfTheReplay() {
    assertSameAsReplay(
        (cable, bytes) -> {
          for (int i = 0; i < bytes.length(); i++) {
            cable.send(bytes.substring(i, i + 1));
          }
        });
  }

  @Test
  void anInterruptedSessionAnswersAndGoesOnAtTheNextPosition() {
    try (Cable cable = Cable.lay(folder, "gauge")) {
      List<String> args = bench.bore(cable.port(), "bench.ledger");
      try (Running first = LiveBench.start(folder, args, cable)) {
        for (int i = 0; i < 8; i++) {
          LiveBench.press(first, cable, presses.get(i).frame());
        }
        first.interrupt();
        JsonNode answer = first.end(LiveBench.PATIENCE).noTrace().json();
        assertEquals(7, diameters(answer), answer::toString);
      }
      try (Running second = LiveBench.start(folder, args, cable)) {
        for (int i = 8; i < presses.size(); i++) {
          LiveBench.press(second, cable, presses.get(i).frame());
        }
        assertBores(second.end(LiveBench.PATIENCE).ended(1).json());
      }
    }
  }

  @Test
  void aCablePulledOutAndPluggedInAgainDoesNotEndTheSession() {
    Cable cable = Cable.lay(folder, "gauge");
    try (Running running =
        LiveBench.start(folder, bench.bore(cable.port(), "bench.ledger"), cable)) {
      for (int i = 0; i < presses.size(); i++) {
        if (i % 6 == 3) {
          cable.close();
          Cable again = Cable.lay(folder, "gauge");
          cable = again;
          assertTrue(
              Watched.within(LiveBench.PATIENCE, () -> again.isOpenIn(running.pid())),
              running::toString);
        }
        LiveBench.press(running, cable, presses.get(i).frame());
      }
      assertBores(running.end(LiveBench.PATIENCE).ended(1).json());
      assertTrue(running.toString().contains("\ngone: "), running::toString);
      assertTrue(running.toString().contains("\nback: "), running::toString);
    } finally {
      cable.close();
    }
  }

  @Test
  void onDemandAPulledCableEndsTheProgramWithItsOwnStatus() {
    Cable cable = Cable.lay(folder, "gauge");
    List<String> args = bench.bore(cable.port(), "bench.ledger");
    args.add("--stop-if-gone");
    try (Running running = LiveBench.start(folder, args, cable)) {
      LiveBench.press(running, cable, presses.get(0).frame());
      cable.close();
      String complaint = running.end(LiveBench.PATIENCE).noTrace().ended(3).stderr();
      assertTrue(complaint.contains("plug it in again"), complaint);
    } finally {
      cable.close();
    }
  }

  @Test
  void withNewASessionBeginsAtTheSettingRingAgain() {
    try (Cable cable = Cable.lay(folder, "gauge")) {
      List<String> args = bench.bore(cable.port(), "bench.ledger");
      try (Running first = LiveBench.start(folder, args, cable)) {
        for (int i = 0; i < 4; i++) {
          LiveBench.press(first, cable, presses.get(i).frame());
        }
        first.interrupt();
        first.end(LiveBench.PATIENCE).noTrace();
      }
      args.add("--new");
      try (Running second = LiveBench.start(folder, args, cable)) {
        for (PressSession.Press press : presses) {
          LiveBench.press(second, cable, press.frame());
        }
        assertBores(second.end(LiveBench.PATIENCE).ended(1).json());
      }
    }
  }

  @Test
  void gapsComeOverTheLineToo() {
    GapSession gaps =
        GapSession.gauge(
            engine,
            engine.ring("top"),
            List.of(0.42, 0.40, 0.45),
            0,
            Wire.signedMmWithUnit(6),
            new Noise(13));
    try (Cable cable = Cable.lay(folder, "gauge")) {
      List<String> args = bench.gap(cable.port(), "top", "bench.ledger");
      try (Running running = LiveBench.start(folder, args, cable)) {
        gaps.presses().forEach(press -> LiveBench.press(running, cable, press.frame()));
        Outcome outcome = running.end(LiveBench.PATIENCE).noTrace();
        assertTrue(outcome.exit() == 0 || outcome.exit() == 1, outcome::toString);
        assertGaps(outcome.json(), gaps);
      }
    }
  }

  private void assertSameAsReplay(java.util.function.BiConsumer<Cable, String> feed) {
    String rest = presses.stream().skip(1).map(p -> p.frame()).collect(Collectors.joining());
    try (Cable cable = Cable.lay(folder, "gauge")) {
      List<String> args = bench.bore(cable.port(), "bench.ledger");
      try (Running running = LiveBench.start(folder, args, cable)) {
        LiveBench.press(running, cable, presses.get(0).frame());
        feed.accept(cable, rest);
        Outcome live = running.end(LiveBench.PATIENCE).ended(1);
        assertEquals(presses.size(), running.taken(), running::toString);
        assertBores(live.json());
        assertEquals(bores(replayed()), bores(live.json()));
      }
    }
  }

  private JsonNode replayed() {
    Map<String, Object> header = new LinkedHashMap<>();
    header.put("gauge", "bore.gauge.toml");
    header.put("measure", "bore");
    header.put("started", "2031-05-06T08:00:00Z");
    header.put("setting_temp_c", engine.bench().settingTempC());
    header.put("block_temp_c", engine.bench().blockTempC());
    CaptureText capture = new CaptureText(header);
    presses.forEach(press -> capture.chunk(press.reading().tS(), press.frame()));
    Bundle bundle = bench.bundle().withCapture("bore.capture.jsonl", capture);
    List<String> args =
        List.of(
            "replay",
            "--json",
            "--job",
            bundle.path("engine.job.toml"),
            "--capture",
            bundle.path("bore.capture.jsonl"),
            "--ledger",
            bundle.path("replay.ledger"));
    return Launcher.quick().run(args).ended(1).json();
  }

  private void assertBores(JsonNode answer) {
    List<BoreReading> readings = presses.stream().map(PressSession.Press::reading).toList();
    BoreTruth truth = BoreTruth.ofReadings(engine.bench(), readings);
    int compared =
        new ResultsCheck(answer, "live").bores(engine, truth, ResultsCheck.DIAMETER_MM).compared();
    assertEquals(18 + 3 * (2 + 3), compared);
  }

  private static void assertGaps(JsonNode answer, GapSession gaps) {
    int compared = 0;
    for (GapSession.Press press : gaps.presses()) {
      JsonNode cylinder =
          Json.among(answer.path("cylinders"), "cylinder", press.reading().cylinder());
      JsonNode ring = Json.among(cylinder.path("rings"), "ring", "top");
      JsonNode gap = Json.among(ring.path("gaps"), "depth_mm", press.reading().depthMm());
      double measuredMm = gap.path("measured_mm").asDouble(Double.NaN);
      assertEquals(press.reading().mm().doubleValue(), measuredMm, 1e-9, gap::toString);
      compared++;
    }
    assertEquals(9, compared);
  }

  /** The bores' positions alone: what else an answer says may depend on the clock. */
  private static List<JsonNode> bores(JsonNode answer) {
    List<JsonNode> bores = new java.util.ArrayList<>();
    answer.path("cylinders").forEach(c -> bores.add(c.path("bore").path("positions")));
    return bores;
  }

  private static int diameters(JsonNode answer) {
    int known = 0;
    for (JsonNode positions : bores(answer)) {
      for (JsonNode position : positions) {
        known += position.path("diameter_mm").isNumber() ? 1 : 0;
      }
    }
    return known;
  }
}
