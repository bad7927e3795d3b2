package boreledger.station.gauging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.gauging.GaugingEvent.Over;
import boreledger.station.gauging.GaugingEvent.Said;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.LineBroke;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SampleRefused;
import boreledger.station.ledger.EntryBody.SessionEnded;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
import boreledger.station.session.Outcome;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class GaugingRunFaultTest {
  private static final Position THRUST = new Position.Bore(1, 12, "thrust");

  @TempDir Path folder;
  private RunOnAScript bench;

  @BeforeEach
  void openASession() throws Exception {
    bench = new RunOnAScript(folder);
  }

  @AfterEach
  void closeTheLedger() throws Exception {
    bench.close();
  }

  @Test
  void whatWasWholeBeforeTheLineBrokeIsTakenAndTheRestIsKeptAsRefused() throws Exception {
    bench.line.says(1, "+0.001\n+0.0").says(2, "21\n+0.0").breaks("the cable has gone");

    GaugingRun run = bench.live();

    assertEquals(Ending.LINE_BROKE, run.run());
    assertEquals("the cable has gone", run.fault().orElseThrow().getMessage());
    List<EntryBody> bodies = bodies();
    assertEquals(0.001, ((ReadingTaken) bodies.get(0)).valueMm());
    assertEquals(0.021, ((ReadingTaken) bodies.get(1)).valueMm());
    assertEquals("2b302e30", ((SampleRefused) bodies.get(2)).raw());
    assertEquals(
        new LineBroke(
            bench.session.id(), 2, Instant.parse("2031-05-06T08:00:02Z"), "the cable has gone"),
        bodies.get(3));
    assertEquals(4, bodies.size());
    assertTrue(bench.line.isClosed());
  }

  @Test
  void aLineThatGoesAndComesBackIsWrittenDownAndTheRunGoesOn() throws Exception {
    bench
        .line
        .says(1, "+0.001\n+0.0")
        .goes(2, "it has gone")
        .returns(5, "it is back")
        .says(6, "+0.021\n+0.018\n+0.001\n");

    GaugingRun run = bench.live();

    assertEquals(Ending.PLAN_DONE, run.run());
    assertTrue(run.fault().isEmpty());
    List<EntryBody> bodies = bodies();
    assertEquals("2b302e30", ((SampleRefused) bodies.get(1)).raw());
    assertEquals(
        List.of(
            new LineBroke(
                bench.session.id(), 2, Instant.parse("2031-05-06T08:00:02Z"), "it has gone"),
            new LineBroke(
                bench.session.id(), 5, Instant.parse("2031-05-06T08:00:05Z"), "it is back")),
        bodies.subList(2, 4));
    assertEquals(4, bench.stored().readings().size());
    assertEquals(
        List.of(
            new GaugingEvent.LineGone("it has gone", new GaugingEvent.Progress(THRUST, 1, 4)),
            new GaugingEvent.LineBack("it is back", new GaugingEvent.Progress(THRUST, 1, 4))),
        bench.told.stream()
            .filter(
                event ->
                    event instanceof GaugingEvent.LineGone
                        || event instanceof GaugingEvent.LineBack)
            .toList());
  }

  @Test
  void aRunWithoutAFaultHasNone() throws Exception {
    bench.line.ends(1);
    GaugingRun run = bench.live();

    run.run();

    assertTrue(run.fault().isEmpty());
  }

  @Test
  void aLineThatBreaksAfterAStopIsNoFault() throws Exception {
    bench.line.breaks("closed while it was read");
    GaugingRun run = bench.live();
    run.stop();

    assertEquals(Ending.STOPPED, run.run());

    assertTrue(run.fault().isEmpty());
    assertEquals(List.of(), bodies());
  }

  @Test
  void aReaderThatDiesEndsTheRunInsteadOfLettingItWaitForEver() throws Exception {
    bench.line.says(1, "+0.001\n").kills();
    GaugingRun run = bench.live();

    IllegalStateException slip = assertThrows(IllegalStateException.class, run::run);

    assertEquals("the thread that reads scripted line has died", slip.getMessage());
    assertEquals(1, bench.stored().readings().size());
  }

  @Test
  void theWatcherIsToldOnlyWhatTheLedgerHolds() throws Exception {
    bench.line.says(1, "+0.001\nrust\n-0.6\n+0.021\n+0.018\n+0.001\n");
    List<String> seen = new ArrayList<>();

    bench
        .live(
            event -> {
              if (event instanceof Said said) {
                seen.add(inTheLedger(said.outcome()));
              }
            })
        .run();

    assertEquals(
        List.of("reading", "refused", "refused", "reading", "reading", "reading and the end"),
        seen);
  }

  @Test
  void aLedgerThatFailsInTheMiddleStopsTheRunAndKeepsWhatWasAcknowledged() throws Exception {
    bench.line.says(1, "+0.001\n").says(2, "+0.021\n").says(3, "+0.018\n");
    GaugingRun run =
        bench.live(
            event -> {
              if (event instanceof Said said && said.progress().done() == 2) {
                anotherProgramWrites();
              }
            });

    LedgerFault fault = assertThrows(LedgerFault.class, run::run);

    assertTrue(fault.getMessage().contains("another program wrote"), fault::getMessage);
    assertTrue(bench.line.isClosed());
    assertEquals(2, bench.outcomes().size());
    assertEquals(2, bench.stored().readings().size());
    Over over = (Over) bench.told.get(bench.told.size() - 1);
    assertEquals(Ending.LEDGER_FAILED, over.ending());
    assertEquals(2, over.progress().done());
  }

  @Test
  void aWatcherThatFailsStopsTheRunClosesTheLineAndIsNotHidden() throws Exception {
    bench.line.says(1, "+0.001\n").says(2, "+0.021\n");
    GaugingRun run =
        bench.live(
            event -> {
              if (event instanceof Said) {
                throw new IllegalStateException("a slip in the watcher");
              }
            });

    assertEquals(
        "a slip in the watcher", assertThrows(IllegalStateException.class, run::run).getMessage());

    assertTrue(bench.line.isClosed());
    assertEquals(1, bench.stored().readings().size());
  }

  private List<EntryBody> bodies() throws LedgerFault {
    try (LedgerView view = LedgerView.open(bench.file)) {
      return view.ofSession(bench.session.id()).stream().map(Entry::body).toList();
    }
  }

  /** Names what the ledger's end says, seen from a connection of its own. */
  private String inTheLedger(Outcome outcome) {
    try {
      List<EntryBody> bodies = bodies();
      EntryBody last = bodies.get(bodies.size() - 1);
      if (outcome instanceof Outcome.Taken taken) {
        boolean ended = last instanceof SessionEnded;
        EntryBody reading = ended ? bodies.get(bodies.size() - 2) : last;
        assertEquals(taken.position(), ((ReadingTaken) reading).position());
        return ended ? "reading and the end" : "reading";
      }
      return last instanceof SampleRefused ? "refused" : "nothing";
    } catch (LedgerFault e) {
      throw new AssertionError(e);
    }
  }

  private void anotherProgramWrites() {
    try (Ledger other = Ledger.openOrCreate(bench.file)) {
      other.append(new EntryBody.Document("job", "other.job.toml", "00", "text"));
    } catch (LedgerFault e) {
      throw new AssertionError(e);
    }
  }
}
