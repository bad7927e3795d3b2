package boreledger.station.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.line.LineFault;
import boreledger.station.session.SmallGauge;
import boreledger.station.session.SmallJob;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Which session is gone on with, seen without a port: a session that would be gone on with is
 * refused when its job has changed, and where none would be the start only fails at the port.
 */
class LiveGaugingTest {
  private static final SmallJob CHANGED = SmallJob.standard().with("96.050", "96.060");
  private static final List<String> UNFINISHED = BenchFolder.BORES.subList(0, 2);

  @TempDir Path folder;
  private BenchFolder bench;

  @BeforeEach
  void openAFolder() {
    bench = new BenchFolder(folder);
    bench.gauge(SmallGauge.deviation());
    bench.gauge(SmallGauge.size());
  }

  @Test
  void aMissingPortLeavesNoLedger() {
    bench.job();

    LineFault fault = assertThrows(LineFault.class, () -> prepare(bores()));

    assertTrue(fault.getMessage().contains(port()), fault::getMessage);
    assertFalse(Files.exists(bench.ledger()));
  }

  @Test
  void anUnfinishedSessionIsNotGoneOnWithAfterItsJobWasChanged() throws Exception {
    replay(UNFINISHED);
    bench.job(CHANGED);

    UsageProblem problem = assertThrows(UsageProblem.class, () -> prepare(bores()));

    assertTrue(problem.getMessage().matches("session \\d+ is unfinished and the job file has.*"));
    assertTrue(problem.getMessage().contains("--new"), problem::getMessage);
  }

  @Test
  void anUnfinishedSessionIsNotGoneOnWithAfterItsGaugeProfileWasChanged() throws Exception {
    replay(UNFINISHED);
    bench.gauge(SmallGauge.deviation().with("0.002", "0.003"));

    UsageProblem problem = assertThrows(UsageProblem.class, () -> prepare(bores()));

    assertTrue(problem.getMessage().contains("the gauge profile has changed"));
  }

  @Test
  void aNewSessionOnDemandDoesNotMindTheUnfinishedOne() throws Exception {
    replay(UNFINISHED);
    bench.job(CHANGED);

    assertThrows(LineFault.class, () -> prepare(fresh()));
  }

  @Test
  void aFinishedSessionIsNotGoneOnWith() throws Exception {
    replay(BenchFolder.BORES);
    bench.job(CHANGED);

    assertThrows(LineFault.class, () -> prepare(bores()));
  }

  @Test
  void anUnfinishedSessionBeforeAFinishedOneIsLeftAlone() throws Exception {
    replay(UNFINISHED);
    replay(BenchFolder.BORES);
    bench.job(CHANGED);

    assertThrows(LineFault.class, () -> prepare(bores()));
  }

  @Test
  void anUnfinishedSessionOfAnotherMeasureIsLeftAlone() throws Exception {
    replay(UNFINISHED);
    bench.job(CHANGED);

    assertThrows(LineFault.class, () -> prepare(gaps("top")));
  }

  @Test
  void anUnfinishedSessionOfAnotherRingIsLeftAlone() throws Exception {
    String second =
        """
        [[ring]]
        name = "second"
        cte_per_k = 12.0e-6
        travel_mm = [9.0, 113.0]
        gap_min_mm = 0.30
        gap_max_mm = 0.60
        target_mm = 0.52
        depths_mm = [12.0, 60.0]
        """;
    SmallJob both = SmallJob.standard().with("[[ring]]", second + "[[ring]]");
    Replay.prepare(bench.job(both), List.of(bench.gaps(List.of("0.450"))), null)
        .into(bench.ledger(), event -> {});
    bench.job(both.with("96.050", "96.060"));

    assertThrows(LineFault.class, () -> prepare(gaps("second")));
    assertThrows(UsageProblem.class, () -> prepare(gaps("top")));
  }

  @Test
  void anUnfinishedSessionOfAnotherJobIsLeftAlone() throws Exception {
    replay(UNFINISHED);
    bench.job(SmallJob.standard().with("Small engine", "Other engine"));

    assertThrows(LineFault.class, () -> prepare(bores()));
  }

  @Test
  void gapsWantARing() {
    bench.job();

    UsageProblem problem = assertThrows(UsageProblem.class, () -> prepare(gaps(null)));

    assertEquals("--measure: the measure gap needs a ring, one of top", problem.getMessage());
    assertFalse(Files.exists(bench.ledger()));
  }

  @Test
  void boresGoWithoutARing() {
    bench.job();
    LiveRequest request = request(Measure.BORE, "pressed.gauge.toml", "top", false);

    UsageProblem problem = assertThrows(UsageProblem.class, () -> prepare(request));

    assertEquals("--measure: the measure bore goes without a ring", problem.getMessage());
  }

  private void replay(List<String> lines) throws Exception {
    Replay.prepare(bench.job(), List.of(bench.bores(lines)), null)
        .into(bench.ledger(), event -> {});
  }

  private static void prepare(LiveRequest request) throws Exception {
    LiveGauging.prepare(request).close();
  }

  private LiveRequest bores() {
    return request(Measure.BORE, "pressed.gauge.toml", null, false);
  }

  private LiveRequest fresh() {
    return request(Measure.BORE, "pressed.gauge.toml", null, true);
  }

  private LiveRequest gaps(String ring) {
    return request(Measure.GAP, "size.gauge.toml", ring, false);
  }

  private LiveRequest request(Measure measure, String gauge, String ring, boolean fresh) {
    return new LiveRequest(
        folder.resolve("small.job.toml"),
        new LiveChoice.Gauge(folder.resolve(gauge), port(), true),
        measure,
        ring,
        20.0,
        20.0,
        bench.ledger(),
        fresh);
  }

  private String port() {
    return folder.resolve("no-such-port").toString();
  }
}
