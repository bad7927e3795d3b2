package boreledger.station.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.LengthUnit;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingEvent.Began;
import boreledger.station.gauging.GaugingEvent.LineBack;
import boreledger.station.gauging.GaugingEvent.LineGone;
import boreledger.station.gauging.GaugingEvent.Said;
import boreledger.station.ledger.EntryBody.SessionResumed;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.results.JobResults;
import boreledger.station.session.Session;
import boreledger.station.session.SessionStart;
import boreledger.station.session.SmallGauge;
import boreledger.station.session.SmallJob;
import boreledger.station.session.StoredSession;
import boreledger.station.session.WallClock;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

@Timeout(120)
@EnabledOnOs(value = OS.LINUX, disabledReason = "needs pseudo-terminals made by socat")
class LiveGaugingOnAPortTest {
  @TempDir Path folder;
  private final List<GaugingEvent> told = new ArrayList<>();
  private BenchFolder bench;
  private Pty pty;

  @BeforeEach
  void layACable() {
    bench = new BenchFolder(folder);
    bench.job(SmallJob.atOneDepth());
    bench.gauge(SmallGauge.deviation());
    pty = Pty.in(folder);
  }

  @AfterEach
  void pullTheCable() {
    pty.close();
  }

  @Test
  void aWholePlanGivesTheResultsOfItsSession() throws Exception {
    JobResults results = gauge(saying("+0.000\n", "+0.028\n", "+0.022\n", "+0.000\n"));

    assertTrue(stored().ended());
    assertEquals(96.030, results.cylinders().get(0).bore().positions().get(0).diameterMm(), 1e-9);
    assertFalse(began().resumed());
  }

  @Test
  void theSessionsClockRunsInSecondsFromItsOpening() throws Exception {
    gauge(saying("+0.000\n", "+0.028\n", "+0.022\n", "+0.000\n"));

    double tS = -1;
    for (StoredSession.StoredReading reading : stored().readings()) {
      assertTrue(reading.reading().tS() >= Math.max(0, tS), reading::toString);
      tS = reading.reading().tS();
    }
    assertTrue(tS < 120, "seconds since the opening: " + tS);
  }

  @Test
  void aStoppedSessionIsGoneOnWithAtItsNextPosition() throws Exception {
    stopAfterTwo();

    JobResults results = gauge(saying("+0.022\n", "+0.000\n"));

    assertTrue(began().resumed());
    assertEquals(new Bore(1, 12, "pin"), began().progress().next());
    assertEquals(4, stored().readings().size());
    assertTrue(stored().ended());
    assertEquals(96.024, results.cylinders().get(0).bore().positions().get(1).diameterMm(), 1e-9);
  }

  @Test
  void goingOnIsWrittenIntoTheLedger() throws Exception {
    stopAfterTwo();

    gauge(saying("+0.022\n", "+0.000\n"));

    try (LedgerView view = LedgerView.open(bench.ledger())) {
      assertEquals(
          1,
          view.ofSession(stored().id()).stream()
              .filter(entry -> entry.body() instanceof SessionResumed)
              .count());
    }
  }

  @Test
  void aSessionOfTwoHoursAgoGoesOnWithTheSettingRing() throws Exception {
    openedBefore(Duration.ofHours(2));

    gauge(saying("+0.001\n", "+0.028\n", "+0.022\n", "+0.000\n"));

    assertTrue(began().resumed());
    assertEquals(SettingCheck.RESUMING, began().progress().next());
    assertEquals(
        List.of("opening", "resuming", "closing"),
        stored().readings().stream()
            .map(StoredSession.StoredReading::position)
            .filter(SettingCheck.class::isInstance)
            .map(position -> ((SettingCheck) position).check())
            .toList());
    double resumingTS = stored().at(SettingCheck.RESUMING).orElseThrow().reading().tS();
    assertTrue(resumingTS >= 7200 && resumingTS < 7320, "two hours and a bit: " + resumingTS);
  }

  @Test
  void aSessionOfAQuarterOfAnHourAgoGoesOnWithoutTheSettingRing() throws Exception {
    openedBefore(Duration.ofMinutes(15));

    gauge(saying("+0.028\n", "+0.022\n", "+0.000\n"));

    assertEquals(new Bore(1, 12, "thrust"), began().progress().next());
  }

  @Test
  void aPulledCableIsWaitedForAndTheSessionGoesOn() throws Exception {
    Consumer<GaugingEvent> words = saying("+0.000\n", "+0.028\n", "+0.022\n", "+0.000\n");
    List<GaugingEvent> news = new ArrayList<>();

    gauge(
        event -> {
          if (event instanceof Said said && said.progress().done() == 2) {
            pty.close();
          } else if (event instanceof LineGone) {
            news.add(event);
            pty = Pty.in(folder);
          } else if (event instanceof LineBack) {
            news.add(event);
            pty.send("+0.022\n");
          } else if (event instanceof Said said && said.progress().done() == 3) {
            pty.send("+0.000\n");
          } else {
            words.accept(event);
          }
        });

    assertEquals(2, news.size());
    assertTrue(((LineGone) news.get(0)).why().contains(pty.port()), news::toString);
    assertTrue(stored().ended());
    assertEquals(4, stored().readings().size());
  }

  @Test
  void aPulledCableThatIsNotWaitedForIsAFaultOfTheLineAndWhatWasAcknowledgedStays() {
    LineFault fault =
        assertThrows(
            LineFault.class,
            () ->
                gauge(
                    request(false),
                    event -> {
                      if (event instanceof Began) {
                        pty.send("+0.000\n");
                      } else if (event instanceof Said) {
                        pty.close();
                      }
                    }));

    assertTrue(fault.getMessage().contains(pty.port()), fault::getMessage);
    assertEquals(List.<Position>of(SettingCheck.OPENING), positions());
  }

  private JobResults gauge(Consumer<GaugingEvent> then) throws Exception {
    return gauge(request(true), then);
  }

  private JobResults gauge(LiveRequest request, Consumer<GaugingEvent> then) throws Exception {
    told.clear();
    try (LiveGauging gauging = LiveGauging.prepare(request)) {
      return gauging.run(
          new Play(
              event -> {
                told.add(event);
                then.accept(event);
              }));
    }
  }

  private LiveRequest request(boolean waits) {
    return new LiveRequest(
        folder.resolve("small.job.toml"),
        new LiveChoice.Gauge(folder.resolve("pressed.gauge.toml"), pty.port(), waits),
        Measure.BORE,
        null,
        20.0,
        20.0,
        bench.ledger(),
        false);
  }

  /** The gauge says its next word as soon as the one before was acknowledged. */
  private Consumer<GaugingEvent> saying(String... words) {
    List<String> left = new ArrayList<>(List.of(words));
    return event -> {
      if ((event instanceof Began || event instanceof Said) && !left.isEmpty()) {
        pty.send(left.remove(0));
      }
    };
  }

  private void stopAfterTwo() throws Exception {
    List<Play> playing = new ArrayList<>();
    Consumer<GaugingEvent> words = saying("+0.000\n", "+0.028\n");
    playing.add(
        new Play(
            event -> {
              words.accept(event);
              if (event instanceof Said said && said.progress().done() == 2) {
                playing.get(0).stop();
              }
            }));
    try (LiveGauging gauging = LiveGauging.prepare(request(true))) {
      gauging.run(playing.get(0));
    }
    assertFalse(stored().ended());
  }

  /** A session with its opening check only, opened some time ago by the clock on the wall. */
  private void openedBefore(Duration ago) throws Exception {
    SessionStart start =
        new SessionStart(
            SmallJob.atOneDepth().job(),
            SmallJob.tables(),
            SmallGauge.deviation().profile(),
            Measure.BORE,
            null,
            20.0,
            20.0,
            "a line");
    Instant opened = Instant.now().minus(ago);
    try (Ledger ledger = Ledger.openOrCreate(bench.ledger())) {
      Session session = Session.open(ledger, start, WallClock.from(opened));
      session.offer(picked(5, 0));
    }
  }

  private static PickEvent.Picked picked(double tS, double valueMm) {
    Sample sample = new Sample(tS, Bytes.ofHex("2b31"), valueMm, LengthUnit.MM, false);
    return new PickEvent.Picked(tS, valueMm, null, List.of(sample), List.of());
  }

  private Began began() {
    return assertInstanceOf(Began.class, told.get(0));
  }

  private List<Position> positions() {
    try {
      return stored().readings().stream().map(StoredSession.StoredReading::position).toList();
    } catch (LedgerFault e) {
      throw new AssertionError(e);
    }
  }

  private StoredSession stored() throws LedgerFault {
    try (LedgerView view = LedgerView.open(bench.ledger())) {
      return StoredSession.all(view).get(0);
    }
  }
}
