package boreledger.station.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.station.audit.AuditReport;
import boreledger.station.audit.LedgerAudit;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.results.JobResults;
import boreledger.station.results.JobSessions;
import boreledger.station.session.Outcome;
import boreledger.station.session.SmallJob;
import boreledger.station.session.StoredSession;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A ring is filed, or a reading corrected, while the ledger is being written by a gauging. */
@Timeout(60)
class FilingWhileGaugingTest {
  private static final double PACE = 80;

  @TempDir Path folder;
  private final ConcurrentLinkedQueue<String> failed = new ConcurrentLinkedQueue<>();
  private final CountDownLatch firstReading = new CountDownLatch(1);
  private final CountDownLatch twoMore = new CountDownLatch(3);
  private GaugingDesk desk;
  private BenchFolder bench;

  @BeforeEach
  void sitDown() {
    bench = new BenchFolder(folder);
    bench.job(SmallJob.standard());
    desk = new GaugingDesk(this::told, failed::add);
  }

  @AfterEach
  void getUp() throws Exception {
    desk.stop();
    desk.lastResults();
  }

  private void told(GaugingEvent event) {
    if (event instanceof GaugingEvent.Said said && said.outcome() instanceof Outcome.Taken) {
      firstReading.countDown();
      twoMore.countDown();
    }
  }

  @Test
  void aPassIsWrittenBetweenTwoReadingsAndTheGaugingGoesOn() throws Exception {
    gauge();
    firstReading.await();

    long pass = filing(bench.ledger()).note(note()).entry();

    assertTrue(desk.isBusy());
    twoMore.await();
    desk.stop();
    desk.lastResults();
    assertEquals(List.of(), List.copyOf(failed));
    JobSessions sessions = stored();
    StoredSession session = sessions.sessions().get(0);
    assertEquals(List.of(pass), sessions.filed().stream().map(each -> each.seq()).toList());
    assertTrue(session.readings().get(0).seq() < pass);
    assertTrue(session.readings().get(2).seq() > pass);
    AuditReport audit = LedgerAudit.of(bench.ledger(), Map.of(), Set.of(), (at, of) -> true);
    assertEquals(List.of(), audit.findings());
  }

  @Test
  void aPassInAnotherLedgerIsWrittenThereAtOnce() throws Exception {
    BenchFolder other = new BenchFolder(folder.resolve("other"));
    Replay.prepare(other.job(), List.of(other.gaps(BenchFolder.GAPS)), null)
        .into(other.ledger(), event -> {});
    gauge();
    firstReading.await();

    filing(other.ledger()).note(note());

    desk.stop();
    desk.lastResults();
    assertEquals(List.of(), stored().filed());
    assertEquals(List.of(), List.copyOf(failed));
  }

  @Test
  void aReadingOfAnotherSessionIsTakenBackBetweenTwoReadings() throws Exception {
    Replay.prepare(bench.job(), List.of(bench.gaps(BenchFolder.GAPS)), null)
        .into(bench.ledger(), event -> {});
    long reading = stored().sessions().get(0).readings().get(0).seq();
    gauge();
    firstReading.await();

    new LedgerBook(bench.ledger(), desk).takeBack(reading, "chip", "A. Turner", Clock.systemUTC());

    assertTrue(desk.isBusy());
    twoMore.await();
    desk.stop();
    desk.lastResults();
    assertEquals(List.of(), List.copyOf(failed));
    StoredSession gaps = stored().sessions().get(0);
    assertEquals(reading, gaps.takenBack().get(0).reading().seq());
    AuditReport audit = LedgerAudit.of(bench.ledger(), Map.of(), Set.of(), (at, of) -> true);
    assertEquals(List.of(), audit.findings());
  }

  @Test
  void aCorrectionOfTheSessionThatIsBeingGaugedIsRefusedAndTheGaugingGoesOn() throws Exception {
    gauge();
    firstReading.await();
    StoredSession session = stored().sessions().get(0);
    long reading = session.readings().get(0).seq();
    LedgerBook book = new LedgerBook(bench.ledger(), desk);

    LedgerFault refused =
        assertThrows(
            LedgerFault.class,
            () -> book.takeBack(reading, "chip", "A. Turner", Clock.systemUTC()));

    assertEquals(
        "session " + session.id() + " is being gauged; end or stop it at the bench first",
        refused.getMessage());
    twoMore.await();
    desk.stop();
    desk.lastResults();
    assertEquals(List.of(), List.copyOf(failed));
    assertEquals(List.of(), stored().sessions().get(0).takenBack());
  }

  @Test
  void whileAGaugingIsStillBeingPreparedNothingIsWritten() throws Exception {
    JobResults before =
        Replay.prepare(bench.job(), List.of(bench.gaps(BenchFolder.GAPS)), null)
            .into(bench.ledger(), event -> {});
    CompletableFuture<Void> prepared = new CompletableFuture<>();
    desk.begin(
        play -> {
          prepared.get();
          return before;
        });

    UsageProblem refused =
        assertThrows(UsageProblem.class, () -> filing(bench.ledger()).note(note()));

    prepared.complete(null);
    assertTrue(refused.getMessage().contains("try again"), refused.getMessage());
    assertEquals(List.of(), stored().filed());
  }

  private void gauge() throws Exception {
    LiveRequest request =
        new LiveRequest(
            bench.job(),
            new LiveChoice.Practice(11, PACE),
            Measure.BORE,
            null,
            20.0,
            20.0,
            bench.ledger(),
            false);
    assertTrue(
        desk.begin(
            play -> {
              try (LiveGauging gauging = LiveGauging.prepare(request)) {
                return gauging.run(play);
              }
            }));
  }

  private FilingBook filing(Path ledger) {
    return new FilingBook(ledger, desk, Clock.systemUTC());
  }

  private static PassNote note() {
    return new PassNote(
        null, 1, "top", 5, new BigDecimal("0.42"), new BigDecimal("0.45"), "A. Turner");
  }

  private JobSessions stored() throws Exception {
    try (LedgerView view = LedgerView.open(bench.ledger())) {
      return new StoredJobs(view).latestSessions().orElseThrow();
    }
  }
}
