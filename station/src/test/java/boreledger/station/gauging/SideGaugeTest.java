package boreledger.station.gauging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.station.gauging.GaugingEvent.Beside;
import boreledger.station.ledger.LedgerView;
import boreledger.station.session.Session;
import boreledger.station.session.SessionStart;
import boreledger.station.session.SmallGauge;
import boreledger.station.session.SmallJob;
import boreledger.station.session.StoredSession;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class SideGaugeTest {
  @TempDir Path folder;
  private final ScriptedLine sideLine = new ScriptedLine();
  private RunOnAScript bench;
  private SideGauge gaps;
  private final List<When> script = new ArrayList<>();
  private Runnable onGone = () -> {};
  private GaugingRun running;
  private int mainSaid;
  private int sideSaid;

  @BeforeEach
  void openASession() throws Exception {
    bench = new RunOnAScript(folder);
    SessionStart bores = RunOnAScript.start();
    SessionStart start =
        new SessionStart(
            SmallJob.standard().with("cylinders = 1", "cylinders = 2").job(),
            bores.tables(),
            SmallGauge.size().profile(),
            Measure.GAP,
            bores.job().ring("top").orElseThrow(),
            20.0,
            20.0,
            "another script");
    gaps =
        new SideGauge(start, sideLine, () -> Session.open(bench.ledger, start, RunOnAScript.WALL));
  }

  @AfterEach
  void closeTheLedger() throws Exception {
    bench.close();
  }

  @Test
  void eachGaugesReadingsAreInItsOwnSessionAndNoneIsMissing() throws Exception {
    bench.line.says(1, "+0.001\n");
    when(1, false, () -> sideLine.says(1, "0.450\nrust\n"));
    when(2, true, () -> bench.line.says(2, "+0.021\n+0.018\n+0.001\n"));
    // The main plan is done then, and the run waits for what the other has begun.
    when(4, false, () -> sideLine.says(5, "0.460\n"));

    assertEquals(Ending.PLAN_DONE, run());

    assertEquals(List.of(0.001, 0.021, 0.018, 0.001), values(0));
    assertEquals(List.of(0.45, 0.46), values(1));
    assertEquals(0, sessions().get(0).refused().size());
    assertEquals(1, sessions().get(1).refused().size());
    assertTrue(sessions().stream().allMatch(StoredSession::ended));
    assertTrue(bench.line.isClosed() && sideLine.isClosed());
  }

  @Test
  void aGaugeThatSaysNothingOpensNoSessionAndKeepsNobodyWaiting() throws Exception {
    bench.line.says(1, "+0.001\n+0.021\n+0.018\n+0.001\n");

    assertEquals(Ending.PLAN_DONE, run());

    assertEquals(1, sessions().size());
    assertTrue(gaps.session().isEmpty());
  }

  @Test
  void aFurtherLineThatBreaksIsToldAndTheRunGoesOn() throws Exception {
    bench.line.says(1, "+0.001\n");
    when(1, false, () -> sideLine.says(1, "0.450\n").breaks("the cable has gone"));
    onGone = () -> bench.line.says(2, "+0.021\n+0.018\n+0.001\n");

    assertEquals(Ending.PLAN_DONE, run());

    assertEquals(4, values(0).size());
    assertEquals(List.of(0.45), values(1));
    assertFalse(sessions().get(1).ended());
  }

  @Test
  void theLastValueHeldByAnyGaugeIsTheOneThatIsConfirmed() throws Exception {
    bench.line.says(1, "+0.001\n-0.600\n");
    when(2, false, () -> sideLine.says(1, "5.400\n"));
    when(1, true, () -> running.wish(new Wish.Confirm(null, Wish.By.FOOT_SWITCH)));
    when(2, true, () -> running.wish(new Wish.Confirm(null, Wish.By.FOOT_SWITCH)));
    when(3, false, () -> bench.line.says(2, "+0.018\n+0.001\n"));
    when(5, false, () -> sideLine.says(5, "0.460\n"));

    assertEquals(Ending.PLAN_DONE, run());

    assertEquals(List.of(0.001, -0.6, 0.018, 0.001), values(0));
    assertEquals(List.of(5.4, 0.46), values(1));
    assertEquals(1, sessions().get(1).readings().get(0).reading().cautions().size());
  }

  private record When(int said, boolean bySide, Runnable then) {}

  /** Once so many outcomes of the main or the further gauge were told, that happens. */
  private void when(int said, boolean bySide, Runnable then) {
    script.add(new When(said, bySide, then));
  }

  private Ending run() throws Exception {
    running =
        GaugingRun.live(
            bench.session, bench.line, false, () -> RunOnAScript.NOW_S, List.of(gaps), this::told);
    return running.run();
  }

  private void told(GaugingEvent event) {
    boolean bySide = event instanceof Beside;
    GaugingEvent what = event instanceof Beside beside ? beside.event() : event;
    if (what instanceof GaugingEvent.LineGone) {
      onGone.run();
    }
    if (what instanceof GaugingEvent.Said) {
      int said = bySide ? ++sideSaid : ++mainSaid;
      script.stream()
          .filter(when -> when.said() == said && when.bySide() == bySide)
          .forEach(when -> when.then().run());
    }
  }

  private List<Double> values(int session) throws Exception {
    return sessions().get(session).readings().stream()
        .map(stored -> stored.reading().valueMm())
        .toList();
  }

  private List<StoredSession> sessions() throws Exception {
    try (LedgerView view = LedgerView.open(bench.file)) {
      return StoredSession.all(view);
    }
  }
}
