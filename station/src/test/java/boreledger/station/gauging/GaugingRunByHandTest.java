package boreledger.station.gauging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.gauging.GaugingEvent.Said;
import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.Outcome;
import boreledger.station.session.Session;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What a person at the bench does to a run from another thread. */
@Timeout(60)
class GaugingRunByHandTest {
  private static final String HELD = "-0.600\n";

  @TempDir Path folder;
  private final ExecutorService threads = Executors.newSingleThreadExecutor();
  private RunOnAScript bench;

  @BeforeEach
  void openASession() throws Exception {
    bench = new RunOnAScript(folder);
  }

  @AfterEach
  void closeTheLedger() throws Exception {
    threads.shutdownNow();
    assertTrue(threads.awaitTermination(30, TimeUnit.SECONDS), "a run is still going on");
    bench.close();
  }

  @Test
  void aStopFromAnotherThreadEndsAQuietRunWhichCanBeResumed() throws Exception {
    bench.line.says(1, "+0.001\n");
    CountDownLatch taken = new CountDownLatch(1);
    GaugingRun run = bench.live(event -> countDown(taken, event));
    Future<Ending> running = threads.submit(run::run);
    assertTrue(taken.await(30, TimeUnit.SECONDS));

    run.stop();

    assertEquals(Ending.STOPPED, running.get(30, TimeUnit.SECONDS));
    assertTrue(bench.line.isClosed());
    assertFalse(bench.stored().ended());
    Session resumed =
        Session.resume(bench.ledger, RunOnAScript.start(), RunOnAScript.WALL, bench.stored(), 2);
    assertEquals(Optional.of(new Bore(1, 12, "thrust")), resumed.next());
  }

  @Test
  void aRunStoppedBeforeItBeganOnlyBeginsAndEnds() throws Exception {
    GaugingRun run = bench.live();
    run.stop();

    assertEquals(Ending.STOPPED, run.run());

    assertEquals(List.of(), bench.outcomes());
    assertEquals(2, bench.told.size());
  }

  @Test
  void anInterruptedThreadStopsTheRunAndStaysInterrupted() throws Exception {
    GaugingRun run = bench.live();
    Future<Boolean> interrupted =
        threads.submit(
            () -> {
              Thread.currentThread().interrupt();
              assertEquals(Ending.STOPPED, run.run());
              return Thread.interrupted();
            });

    assertTrue(interrupted.get(30, TimeUnit.SECONDS));
    assertTrue(bench.line.isClosed());
  }

  @Test
  void aConfirmedValueIsTakenAtItsPositionWithACaution() throws Exception {
    bench.line.says(1, "+0.001\n").says(2, HELD);
    GaugingRun run = confirming(new AtomicReference<>(), "+0.018\n+0.001\n");

    assertEquals(Ending.PLAN_DONE, run.run());

    var reading = bench.stored().readings().get(1).reading();
    assertEquals(new Bore(1, 12, "thrust"), reading.position());
    assertEquals(-0.6, reading.valueMm());
    assertEquals(1, reading.cautions().size());
    assertTrue(
        reading.cautions().get(0).startsWith("confirmed at the bench although bore 95.4020 mm"),
        reading.cautions().get(0));
    assertEquals(1, bench.stored().refused().size());
  }

  @Test
  void aConfirmedValueOfTheLastPositionEndsTheRunWithoutAnotherWordFromTheGauge() throws Exception {
    bench.line.says(1, "+0.001\n+0.021\n+0.018\n").says(2, HELD);
    GaugingRun run = confirming(new AtomicReference<>(), "");

    assertEquals(Ending.PLAN_DONE, threads.submit(run::run).get(30, TimeUnit.SECONDS));

    assertTrue(bench.stored().ended());
    assertEquals(-0.6, bench.stored().at(SettingCheck.CLOSING).orElseThrow().reading().valueMm());
  }

  @Test
  void aConfirmationAfterThePositionWasReadAgainIsTooLate() throws Exception {
    bench.line.says(1, "+0.001\n").says(2, HELD).says(3, "+0.021\n");
    AtomicReference<Outcome.Held> held = new AtomicReference<>();
    AtomicReference<GaugingRun> running = new AtomicReference<>();
    running.set(
        bench.live(
            event -> {
              if (event instanceof Said said && said.outcome() instanceof Outcome.Held value) {
                held.set(value);
              } else if (took(event) && bench.outcomes().size() == 3) {
                running.get().wish(new Wish.Confirm(held.get(), Wish.By.BENCH));
                bench.line.says(4, "+0.018\n+0.001\n");
              }
            }));

    assertEquals(Ending.PLAN_DONE, running.get().run());

    assertEquals(
        List.of(0.001, 0.021, 0.018, 0.001),
        bench.stored().readings().stream().map(stored -> stored.reading().valueMm()).toList());
  }

  @Test
  void aValueConfirmedTwiceIsTakenOnce() throws Exception {
    bench.line.says(1, "+0.001\n").says(2, HELD);
    AtomicReference<GaugingRun> running = new AtomicReference<>();
    running.set(
        bench.live(
            event -> {
              if (event instanceof Said said && said.outcome() instanceof Outcome.Held held) {
                running.get().wish(new Wish.Confirm(held, Wish.By.BENCH));
                running.get().wish(new Wish.Confirm(held, Wish.By.BENCH));
                bench.line.says(3, "+0.018\n+0.001\n");
              }
            }));

    assertEquals(Ending.PLAN_DONE, running.get().run());

    assertEquals(4, bench.stored().readings().size());
  }

  /** A live run whose held values are confirmed at once, whereupon the gauge says more. */
  private GaugingRun confirming(AtomicReference<GaugingRun> running, String more) {
    running.set(
        bench.live(
            event -> {
              if (event instanceof Said said && said.outcome() instanceof Outcome.Held held) {
                running.get().wish(new Wish.Confirm(held, Wish.By.BENCH));
                bench.line.says(3, more);
              }
            }));
    return running.get();
  }

  private static void countDown(CountDownLatch taken, GaugingEvent event) {
    if (took(event)) {
      taken.countDown();
    }
  }

  private static boolean took(GaugingEvent event) {
    return event instanceof Said said && said.outcome() instanceof Outcome.Taken;
  }
}
