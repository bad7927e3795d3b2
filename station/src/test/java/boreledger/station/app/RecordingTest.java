package boreledger.station.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.CaptureFiles;
import boreledger.drivers.capture.CaptureHeader;
import boreledger.drivers.capture.Measure;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingEvent.Began;
import boreledger.station.gauging.GaugingEvent.LineBack;
import boreledger.station.gauging.GaugingEvent.LineGone;
import boreledger.station.gauging.GaugingEvent.Said;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SampleRefused;
import boreledger.station.ledger.LedgerView;
import boreledger.station.session.SmallGauge;
import boreledger.station.session.SmallJob;
import boreledger.station.session.StoredSession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What is recorded while it is gauged gives the same readings when it is replayed. */
@Timeout(120)
class RecordingTest {
  private static final LiveChoice PRACTICE = new LiveChoice.Practice(11, 500);

  @TempDir Path folder;
  private BenchFolder bench;
  private Path recording;

  @BeforeEach
  void openAFolder() throws Exception {
    bench = new BenchFolder(folder);
    bench.job();
    bench.gauge(SmallGauge.deviation());
    recording = Files.createDirectory(folder.resolve("kept")).resolve("today.capture.jsonl");
  }

  @Test
  void replayedRockingGivesTheSameReadings() throws Exception {
    gauge(PRACTICE, event -> {});

    assertSameWhenReplayed(6);
  }

  @Test
  @EnabledOnOs(value = OS.LINUX, disabledReason = "needs pseudo-terminals made by socat")
  void replayedLineThatWentAwayGivesTheSameReadingsAndRefusals() throws Exception {
    Pty[] pty = {Pty.in(folder)};
    bench.job(SmallJob.atOneDepth());
    Path gauge = folder.resolve("pressed.gauge.toml");
    gauge(
        new LiveChoice.Gauge(gauge, pty[0].port(), true),
        event -> {
          if (event instanceof Began) {
            pty[0].send("+0.000\nrust\n+0.0");
          } else if (event instanceof Said said && said.progress().done() == 1) {
            // Pulled once the bad frame is known too, so that the rest has been read with it.
            if (said.outcome() instanceof boreledger.station.session.Outcome.Refused) {
              pty[0].close();
            }
          } else if (event instanceof LineGone) {
            pty[0] = Pty.in(folder);
          } else if (event instanceof Said said && said.progress().done() == 2) {
            pty[0].send("+0.022\n");
          } else if (event instanceof Said said && said.progress().done() == 3) {
            pty[0].send("+0.000\n");
          }
          if (event instanceof LineBack) {
            pty[0].send("+0.028\n");
          }
        });
    pty[0].close();

    StoredSession live = assertSameWhenReplayed(4);
    assertFalse(live.refused().isEmpty());
  }

  @Test
  void headerTellsWhatWasMeasured() throws Exception {
    gauge(PRACTICE, event -> {});

    CaptureHeader header = CaptureFiles.read(recording).header();
    assertEquals("practice-bore.gauge.toml", header.gauge());
    assertEquals(Measure.BORE, header.measure());
    assertEquals(20.5, header.settingTempC());
    assertEquals(21.5, header.blockTempC());
  }

  @Test
  void recordingThatIsThereIsNotOverwrittenAndNoLedgerIsMade() throws Exception {
    Files.writeString(recording, "yesterday");

    UsageProblem problem = assertThrows(UsageProblem.class, () -> gauge(PRACTICE, event -> {}));

    assertEquals(
        recording + ": is there already, and a recording overwrites nothing", problem.getMessage());
    assertEquals("yesterday", Files.readString(recording));
    assertFalse(Files.exists(bench.ledger()));
  }

  @Test
  void anotherProfileOfTheSameNameIsNotOverwritten() throws Exception {
    Files.writeString(recording.resolveSibling("practice-bore.gauge.toml"), "another");

    UsageProblem problem = assertThrows(UsageProblem.class, () -> gauge(PRACTICE, event -> {}));

    assertTrue(problem.getMessage().contains("another profile of the same name"));
    assertFalse(Files.exists(recording));
  }

  private void gauge(LiveChoice listening, Consumer<GaugingEvent> watcher) throws Exception {
    LiveRequest request =
        new LiveRequest(
            folder.resolve("small.job.toml"),
            listening,
            Measure.BORE,
            null,
            20.5,
            21.5,
            bench.ledger(),
            false,
            recording,
            List.of());
    try (LiveGauging gauging = LiveGauging.prepare(request)) {
      gauging.run(new Play(watcher));
    }
  }

  private StoredSession assertSameWhenReplayed(int count) throws Exception {
    Path other = folder.resolve("replayed.db");
    Replay.prepare(folder.resolve("small.job.toml"), List.of(recording), null)
        .into(other, event -> {});
    StoredSession live = stored(bench.ledger());
    StoredSession replayed = stored(other);
    assertEquals(count, live.readings().size());
    assertEquals(essence(live), essence(replayed));
    assertEquals(
        live.refused().stream().map(RecordingTest::essence).toList(),
        replayed.refused().stream().map(RecordingTest::essence).toList());
    return live;
  }

  /** All of the readings but the numbers of entries, and a nanosecond of the wall's clock. */
  private static List<Object> essence(StoredSession session) {
    return session.readings().stream()
        .map(StoredSession.StoredReading::reading)
        .map(RecordingTest::essence)
        .toList();
  }

  private static Object essence(ReadingTaken taken) {
    return List.of(
        taken.position(),
        taken.tS(),
        taken.valueMm(),
        String.valueOf(taken.standardUncertaintyMm()),
        taken.rule(),
        taken.samples(),
        taken.cautions());
  }

  private static Object essence(SampleRefused refused) {
    return List.of(refused.tS(), refused.raw(), String.valueOf(refused.valueMm()), refused.why());
  }

  private static StoredSession stored(Path ledger) throws Exception {
    try (LedgerView view = LedgerView.open(ledger)) {
      return StoredSession.all(view).get(0);
    }
  }
}
