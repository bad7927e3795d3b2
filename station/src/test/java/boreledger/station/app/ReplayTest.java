package boreledger.station.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Pace;
import boreledger.drivers.file.FileProblem;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.Gap;
import boreledger.station.results.JobResults;
import boreledger.station.session.SmallGauge;
import boreledger.station.session.StoredSession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReplayTest {
  @TempDir Path folder;
  private BenchFolder bench;

  @BeforeEach
  void openAFolder() {
    bench = new BenchFolder(folder);
  }

  @Test
  void twoCapturesBecomeTwoSessionsOfOneLedger() throws Exception {
    Path bores = bench.bores(BenchFolder.BORES);
    Path gaps = bench.gaps(BenchFolder.GAPS);

    JobResults results = replay(bores, gaps);

    List<StoredSession> sessions = sessions();
    assertEquals(2, sessions.size());
    assertTrue(sessions.stream().allMatch(StoredSession::ended));
    assertEquals(
        0.028, sessions.get(0).at(new Bore(1, 12, "thrust")).orElseThrow().reading().valueMm());
    assertEquals(0.41, sessions.get(1).at(new Gap(1, "top", 60)).orElseThrow().reading().valueMm());
    assertEquals("Small engine", results.job());
    assertEquals(0, results.refused());
  }

  @Test
  void clocksAndTemperaturesAreTheCapturesNotTheMachines() throws Exception {
    replay(bench.bores(BenchFolder.BORES));

    StoredSession session = sessions().get(0);
    assertEquals(Instant.parse("2031-05-06T08:00:00Z"), session.opened().wall());
    assertEquals(20.0, session.opened().settingTempC());
    assertEquals(Instant.parse("2031-05-06T08:00:20Z"), session.readings().get(1).reading().wall());
    assertEquals("capture file bores.capture.jsonl", session.opened().line());
  }

  @Test
  void theResultsAreOfWhatWasReplayedOnly() throws Exception {
    replay(bench.bores(BenchFolder.BORES));

    JobResults results = replay(bench.gaps(BenchFolder.GAPS));

    assertEquals(2, sessions().size());
    assertTrue(
        results.cylinders().get(0).bore().positions().stream()
            .allMatch(position -> position.diameterMm() == null));
    assertEquals(0.45, results.cylinders().get(0).rings().get(0).gaps().get(0).measuredMm());
  }

  @Test
  void theHeadOfTheResultsIsTheLedgersHeadAfterThem() throws Exception {
    JobResults results = replay(bench.bores(BenchFolder.BORES));

    try (LedgerView view = LedgerView.open(bench.ledger())) {
      assertEquals(view.headHash().toHex(), results.ledgerHead());
    }
  }

  @Test
  void aProfileBesideTheCaptureGoesBeforeOneInTheFolderOfGauges() throws Exception {
    Path capture = bench.bores(List.of("+0.000"));
    Path gauges = folderWith("pressed.gauge.toml", SmallGauge.deviation().with("Pressed", "Other"));

    Replay.prepare(bench.job(), List.of(capture), gauges).into(bench.ledger(), event -> {});

    assertEquals(SmallGauge.deviation().text(), keptGauge());
  }

  @Test
  void aProfileThatIsNotBesideTheCaptureIsTakenFromTheFolderOfGauges() throws Exception {
    Path capture =
        bench.capture(
            "bores.capture.jsonl", BenchFolder.boreHeader("own.gauge.toml"), List.of("+0.000"));
    SmallGauge other = SmallGauge.deviation().with("Pressed", "Other");
    Path gauges = folderWith("own.gauge.toml", other);

    Replay.prepare(bench.job(), List.of(capture), gauges).into(bench.ledger(), event -> {});

    assertEquals(other.text(), keptGauge());
  }

  @Test
  void aProfileInTheFolderOfGaugesGoesBeforeABuiltInOne() throws Exception {
    Path capture =
        bench.capture(
            "bores.capture.jsonl",
            BenchFolder.boreHeader("ascii-line-size.gauge.toml"),
            List.of("96.000"));
    SmallGauge own = SmallGauge.size().with("Pressed", "Own");
    Path gauges = folderWith("ascii-line-size.gauge.toml", own);

    Replay.prepare(bench.job(), List.of(capture), gauges).into(bench.ledger(), event -> {});

    assertEquals(own.text(), keptGauge());
  }

  @Test
  void aBuiltInProfileIsFoundLast() throws Exception {
    Path capture =
        bench.capture(
            "bores.capture.jsonl",
            BenchFolder.boreHeader("ascii-line-size.gauge.toml"),
            List.of("96.000"));

    Replay.prepare(bench.job(), List.of(capture), null).into(bench.ledger(), event -> {});

    assertTrue(keptGauge().contains("name = \"ASCII line, size\""), this::keptGauge);
  }

  @Test
  void aProfileThatIsNowhereIsRefusedWithThePlacesLookedAt() {
    Path capture =
        bench.capture("bores.capture.jsonl", BenchFolder.boreHeader("none.gauge.toml"), List.of());

    FileProblem problem = assertThrows(FileProblem.class, () -> replay(capture));

    assertTrue(problem.getMessage().contains("none.gauge.toml"), problem::getMessage);
    assertTrue(problem.getMessage().contains("looked in " + folder), problem::getMessage);
    assertTrue(problem.getMessage().contains("ascii-line-size.gauge.toml"), problem::getMessage);
    assertNoLedger();
  }

  @Test
  void gapsFromAGaugeThatReadsDeviationsAreRefused() {
    bench.gauge(SmallGauge.deviation());
    Path capture =
        bench.capture(
            "gaps.capture.jsonl",
            BenchFolder.gapHeader("pressed.gauge.toml", "top"),
            List.of("+0.450"));

    UsageProblem problem = assertThrows(UsageProblem.class, () -> replay(capture));

    assertEquals(
        capture
            + ":1: the measure gap needs a gauge that reads = \"size\", pressed.gauge.toml reads"
            + " deviations",
        problem.getMessage());
    assertNoLedger();
  }

  @Test
  void aRingThatTheJobDoesNotHaveIsRefusedWithThoseItHas() {
    bench.gauge(SmallGauge.size());
    Path capture =
        bench.capture(
            "gaps.capture.jsonl",
            BenchFolder.gapHeader("size.gauge.toml", "fourth"),
            List.of("0.450"));

    UsageProblem problem = assertThrows(UsageProblem.class, () -> replay(capture));

    assertEquals(
        capture + ":1: the job has no ring named fourth, it has top", problem.getMessage());
    assertNoLedger();
  }

  @ParameterizedTest
  @ValueSource(strings = {"{\"t\":20", "{\"t\":5,\"rx\":\"2b\"}", "{\"t\":20,\"rx\":\"2b3\"}"})
  void aFaultInTheLastLineOfTheLastCaptureLeavesNoLedger(String line) throws Exception {
    Path bores = bench.bores(BenchFolder.BORES);
    Path gaps = bench.gaps(List.of("0.450"));
    Files.writeString(gaps, Files.readString(gaps) + line + "\n");

    FileProblem problem = assertThrows(FileProblem.class, () -> replay(bores, gaps));

    assertTrue(problem.getMessage().startsWith(gaps + ":3"), problem::getMessage);
    assertNoLedger();
  }

  @Test
  void aJobThatCannotBeReadLeavesNoLedger() {
    Path capture = bench.bores(BenchFolder.BORES);
    Path job = bench.write("bad.job.toml", "format = \"boreledger-job/1\"\nname = 3\n");

    FileProblem problem =
        assertThrows(FileProblem.class, () -> Replay.prepare(job, List.of(capture), null));

    assertTrue(problem.getMessage().startsWith(job + ":2:"), problem::getMessage);
  }

  @Test
  void aFileThatIsNoLedgerIsRefusedAndLeftAsItIs() throws Exception {
    Path capture = bench.bores(BenchFolder.BORES);
    Path file = bench.write("bench.db", "plain words, which are no ledger\n");

    assertThrows(LedgerFault.class, () -> replay(capture));

    assertEquals("plain words, which are no ledger\n", Files.readString(file));
  }

  @Test
  void aStoppedPlayDoesNotBeginTheNextCapture() throws Exception {
    Path bores = bench.bores(BenchFolder.BORES);
    Path gaps = bench.gaps(BenchFolder.GAPS);
    Replay replay = Replay.prepare(bench.job(), List.of(bores, gaps), null);
    List<Play> playing = new ArrayList<>();
    Play play = new Play(event -> playing.get(0).stop());
    playing.add(play);

    try (Ledger ledger = Ledger.openOrCreate(bench.ledger())) {
      replay.into(ledger, () -> Pace.asFastAsRead(), play);
    }

    assertEquals(1, sessions().size());
    assertFalse(sessions().get(0).ended());
  }

  private JobResults replay(Path... captures) throws Exception {
    return Replay.prepare(bench.job(), List.of(captures), null).into(bench.ledger(), event -> {});
  }

  private Path folderWith(String fileName, SmallGauge gauge) {
    return bench.write("gauges/" + fileName, gauge.text()).getParent();
  }

  private String keptGauge() {
    try (LedgerView view = LedgerView.open(bench.ledger())) {
      String sha256 = StoredSession.all(view).get(0).opened().gauge();
      return view.document(sha256).orElseThrow().text();
    } catch (LedgerFault e) {
      throw new AssertionError(e);
    }
  }

  private List<StoredSession> sessions() throws LedgerFault {
    try (LedgerView view = LedgerView.open(bench.ledger())) {
      return StoredSession.all(view);
    }
  }

  private void assertNoLedger() {
    assertFalse(Files.exists(bench.ledger()), "a refused start left a ledger");
  }
}
