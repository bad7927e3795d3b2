package boreledger.station.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingEvent.Beside;
import boreledger.station.gauging.GaugingEvent.Said;
import boreledger.station.ledger.LedgerView;
import boreledger.station.results.JobResults;
import boreledger.station.session.SmallGauge;
import boreledger.station.session.SmallJob;
import boreledger.station.session.StoredSession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

@Timeout(120)
@EnabledOnOs(value = OS.LINUX, disabledReason = "needs pseudo-terminals made by socat")
class TwoGaugesOnPortsTest {
  @TempDir Path folder;
  private BenchFolder bench;

  @BeforeEach
  void openAFolder() {
    bench = new BenchFolder(folder);
    bench.job(SmallJob.atOneDepth());
    bench.gauge(SmallGauge.deviation());
    bench.gauge(SmallGauge.size());
  }

  @Test
  void boresAndGapsGaugedTogetherAreTwoSessionsOfOneLedgerAndOneAnswer() throws Exception {
    try (Pty bores = Pty.in(Files.createDirectory(folder.resolve("a")));
        Pty gaps = Pty.in(Files.createDirectory(folder.resolve("b")));
        LiveGauging gauging = LiveGauging.prepare(request(bores.port(), gaps.port(), "top"))) {
      gaps.send("0.450\n");
      JobResults results = gauging.run(new Play(event -> afterTheGap(event, bores)));

      JobResults.CylinderResults cylinder = results.cylinders().get(0);
      assertEquals(2, cylinder.bore().positions().size());
      assertEquals(1, cylinder.rings().size());
    }
    try (LedgerView view = LedgerView.open(bench.ledger())) {
      List<StoredSession> sessions = StoredSession.all(view);
      assertEquals(List.of(Measure.BORE, Measure.GAP), measures(sessions));
      assertEquals(List.of(0.0, 0.028, 0.022, 0.0), values(sessions.get(0)));
      assertEquals(List.of(0.45), values(sessions.get(1)));
      assertTrue(sessions.stream().allMatch(StoredSession::ended));
    }
  }

  @Test
  void twoGaugesOfOnePortOrOfOneSessionAreRefusedBeforeTheLedgerIsTouched() {
    try (Pty one = Pty.in(folder)) {
      UsageProblem port =
          assertThrows(
              UsageProblem.class,
              () -> LiveGauging.prepare(request(one.port(), one.port(), "top")));
      assertEquals("--also: two gauges cannot share the port " + one.port(), port.getMessage());
      UsageProblem ring =
          assertThrows(
              UsageProblem.class, () -> LiveGauging.prepare(request(one.port(), "none", null)));
      assertEquals("--also: the measure gap needs a ring, one of top", ring.getMessage());
    }
    assertFalse(Files.exists(bench.ledger()));
  }

  private static void afterTheGap(GaugingEvent event, Pty bores) {
    if (event instanceof Beside beside && beside.event() instanceof Said) {
      bores.send("+0.000\n+0.028\n+0.022\n+0.000\n");
    }
  }

  private LiveRequest request(String bores, String gaps, String ring) {
    return new LiveRequest(
        folder.resolve("small.job.toml"),
        new LiveChoice.Gauge(folder.resolve("pressed.gauge.toml"), bores, false),
        Measure.BORE,
        null,
        20.0,
        20.0,
        bench.ledger(),
        false,
        null,
        List.of(
            new LiveRequest.Also(
                new LiveChoice.Gauge(folder.resolve("size.gauge.toml"), gaps, false),
                Measure.GAP,
                ring)));
  }

  private static List<Measure> measures(List<StoredSession> sessions) {
    return sessions.stream().map(session -> session.opened().measure()).toList();
  }

  private static List<Double> values(StoredSession session) {
    return session.readings().stream().map(stored -> stored.reading().valueMm()).toList();
  }
}
