package boreledger.station.gauging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.gauging.GaugingEvent.Noticed;
import boreledger.station.gauging.GaugingEvent.Said;
import boreledger.station.gauging.Wish.By;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.Outcome;
import boreledger.station.session.SmallGauge;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a person asks of a run on a scripted line: opening check, thrust axis, pin axis, closing
 * check. Each outcome that is told may lead to the next wish or word.
 */
@Timeout(60)
class WishesTest {
  private static final Position THRUST = new Bore(1, 12, "thrust");
  private static final Position PIN = new Bore(1, 12, "pin");
  private static final String HELD = "-0.600\n";

  @TempDir Path folder;
  private final Map<Integer, Runnable> script = new HashMap<>();
  private RunOnAScript bench;
  private GaugingRun run;
  private Runnable onGone = () -> {};

  @AfterEach
  void closeTheLedger() throws Exception {
    bench.close();
  }

  @Test
  void aSkippedPositionIsGaugedBeforeTheClosingCheck() throws Exception {
    open(SmallGauge.deviation());
    bench.line.says(1, "+0.001\n");
    after(1, () -> run.wish(new Wish.Skip(By.BENCH)));
    after(2, () -> bench.line.says(2, "+0.018\n+0.021\n+0.001\n"));

    assertEquals(Ending.PLAN_DONE, run.run());

    assertEquals(new Outcome.Skipped(THRUST, PIN), bench.outcomes().get(1));
    assertEquals(List.of(SettingCheck.OPENING, PIN, THRUST, SettingCheck.CLOSING), places());
  }

  @Test
  void aPositionGaugedAgainReplacesItsReading() throws Exception {
    open(SmallGauge.deviation());
    bench.line.says(1, "+0.001\n+0.021\n");
    after(2, () -> run.wish(new Wish.GoTo(THRUST, By.BENCH)));
    after(3, () -> bench.line.says(2, "+0.023\n+0.018\n+0.001\n"));

    assertEquals(Ending.PLAN_DONE, run.run());

    assertEquals(new Outcome.GoingTo(THRUST, true), bench.outcomes().get(2));
    assertEquals(0.023, bench.stored().at(THRUST).orElseThrow().reading().valueMm());
    assertEquals(4, bench.stored().readings().size());
  }

  @Test
  void aReadingTakenBackByHandSaysSoAtTheSessionsTimeAndCanBeRestored() throws Exception {
    open(SmallGauge.deviation());
    bench.line.says(1, "+0.001\n+0.021\n");
    after(2, () -> run.wish(new Wish.TakeBack(By.BENCH)));
    after(3, () -> bench.line.says(2, "+0.024\n+0.018\n"));
    after(5, () -> run.wish(new Wish.TakeBack(By.FOOT_SWITCH)));
    after(6, () -> run.wish(new Wish.TakeBack(By.FOOT_SWITCH)));
    after(7, () -> bench.line.says(3, "+0.001\n"));

    assertEquals(Ending.PLAN_DONE, run.run());

    assertInstanceOf(Outcome.Restored.class, bench.outcomes().get(6));
    var back = bench.stored().takenBack();
    assertEquals(1, back.size());
    assertEquals("asked for at the bench", back.get(0).by().why());
    assertEquals(RunOnAScript.NOW_S, back.get(0).by().tS());
    assertEquals(0.024, bench.stored().at(THRUST).orElseThrow().reading().valueMm());
  }

  @Test
  void aHeldValueThatIsLeftCannotBeConfirmedAnyMore() throws Exception {
    open(SmallGauge.deviation());
    bench.line.says(1, "+0.001\n" + HELD);
    after(2, () -> run.wish(new Wish.Leave(null, By.FOOT_SWITCH)));
    after(3, () -> run.wish(new Wish.Confirm(null, By.FOOT_SWITCH)));
    after(4, () -> bench.line.says(2, "+0.021\n+0.018\n+0.001\n"));

    assertEquals(Ending.PLAN_DONE, run.run());

    assertInstanceOf(Outcome.Left.class, bench.outcomes().get(2));
    assertEquals(new Outcome.NotDone("no held value waits for an answer"), bench.outcomes().get(3));
    assertEquals(0.021, bench.stored().at(THRUST).orElseThrow().reading().valueMm());
  }

  @Test
  void noiseOnTheLineLeavesAHeldValueWaitingAndASkipDoesNot() throws Exception {
    open(SmallGauge.deviation());
    bench.line.says(1, "+0.001\n" + HELD + "rust\n");
    after(3, () -> run.wish(new Wish.Confirm(null, By.BENCH)));
    after(4, () -> bench.line.says(2, HELD));
    after(5, () -> run.wish(new Wish.GoTo(THRUST, By.BENCH)));
    after(6, () -> run.wish(new Wish.Confirm(null, By.BENCH)));
    after(7, () -> bench.line.says(3, "+0.021\n+0.018\n+0.001\n"));

    assertEquals(Ending.PLAN_DONE, run.run());

    assertInstanceOf(Outcome.Taken.class, bench.outcomes().get(3));
    assertInstanceOf(Outcome.NotDone.class, bench.outcomes().get(6));
  }

  @Test
  void aGaugeThatCannotBeAskedOrHasGoneIsNotAsked() throws Exception {
    open(SmallGauge.deviation().with("[frame]", "[ask]\nsend = \"?\"\non = \"trigger\"\n[frame]"));
    bench.line.says(1, "+0.001\n").goes(2, "it has gone");
    onGone = () -> run.wish(new Wish.Read(By.BENCH));
    after(2, () -> bench.line.returns(3, "it is back").says(4, "+0.021\n+0.018\n+0.001\n"));

    assertEquals(Ending.PLAN_DONE, run.run());

    assertEquals(
        new Outcome.NotDone("the gauge's line has gone, so it cannot be asked"),
        bench.outcomes().get(1));
  }

  @Test
  void aNoticeFromElsewhereIsToldToTheWatcher() throws Exception {
    open(SmallGauge.deviation());
    run.notice("the switch has gone");
    bench.line.says(1, "+0.001\n+0.021\n+0.018\n+0.001\n");

    assertEquals(Ending.PLAN_DONE, run.run());

    assertTrue(bench.told.contains(new Noticed("the switch has gone")), bench.told::toString);
  }

  @Test
  void recordedBytesFollowThePlanWhateverIsAsked() throws Exception {
    bench = new RunOnAScript(folder);
    run = bench.recorded();
    run.wish(new Wish.Skip(By.BENCH));
    run.wish(new Wish.TakeBack(By.BENCH));
    run.wish(new Wish.Read(By.BENCH));
    bench.line.says(1, "+0.001\n+0.021\n+0.018\n+0.001\n").ends(2);

    assertEquals(Ending.PLAN_DONE, run.run());

    assertEquals(
        3,
        bench.outcomes().stream()
            .filter(new Outcome.NotDone("recorded bytes follow the plan")::equals)
            .count());
    assertEquals(List.of(SettingCheck.OPENING, THRUST, PIN, SettingCheck.CLOSING), places());
  }

  private void open(SmallGauge gauge) throws Exception {
    bench = new RunOnAScript(folder, gauge);
    run = bench.live(this::told);
  }

  private void after(int outcomes, Runnable then) {
    script.put(outcomes, then);
  }

  private void told(GaugingEvent event) {
    if (event instanceof GaugingEvent.LineGone) {
      onGone.run();
    } else if (event instanceof Said) {
      script.getOrDefault(bench.outcomes().size(), () -> {}).run();
    }
  }

  private List<Position> places() throws Exception {
    return bench.stored().readings().stream().map(stored -> stored.position()).toList();
  }
}
