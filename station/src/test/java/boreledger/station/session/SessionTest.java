package boreledger.station.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.decoder.Rejected;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.FlagSpec;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.LengthUnit;
import boreledger.drivers.profile.LineSettings;
import boreledger.drivers.profile.PickSpec;
import boreledger.drivers.profile.ProfileSource;
import boreledger.drivers.profile.Reads;
import boreledger.station.job.Job;
import boreledger.station.job.JobFiles;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.table.Tables;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionTest {
  private static final WallClock WALL = WallClock.from(Instant.parse("2031-05-06T08:00:00Z"));
  private static final List<Position> PLAN =
      List.of(
          SettingCheck.OPENING,
          new Bore(1, 12, "thrust"),
          new Bore(1, 12, "pin"),
          SettingCheck.CLOSING);

  @TempDir Path folder;
  private Path file;
  private Ledger ledger;

  @BeforeEach
  void openALedger() throws LedgerFault {
    file = folder.resolve("bench.db");
    ledger = Ledger.openOrCreate(file);
  }

  @AfterEach
  void closeTheLedger() throws LedgerFault {
    ledger.close();
  }

  @Test
  void thePlanIsWalkedFromTheSettingRingBackToTheSettingRing() throws Exception {
    Session session = Session.open(ledger, start(), WALL);

    for (Position position : PLAN) {
      assertEquals(Optional.of(position), session.next());
      assertInstanceOf(Outcome.Taken.class, session.offer(picked(session.done(), 0.01)));
    }

    assertEquals(Optional.empty(), session.next());
    assertTrue(stored().ended());
    assertEquals(PLAN, stored().readings().stream().map(r -> r.position()).toList());
  }

  @Test
  void aReadingKeepsTheSettingInForceAndTheWallClockOfItsMoment() throws Exception {
    Session session = Session.open(ledger, start(), WALL);
    long opening = ((Outcome.Taken) session.offer(picked(1.5, 0))).entry();
    session.offer(picked(4.25, 0.02));

    var reading = stored().readings().get(1).reading();

    assertEquals(opening, reading.setting());
    assertEquals(Instant.parse("2031-05-06T08:00:04.250Z"), reading.wall());
    assertEquals(4.25, reading.tS());
    assertEquals("2b31", reading.samples().get(0).raw());
  }

  @Test
  void aReadingAfterTheLastPositionIsRefusedAndKept() throws Exception {
    Session session = walked(PLAN.size());

    Outcome outcome = session.offer(picked(99, 0.01));

    assertEquals(
        new Outcome.Refused(99, null, "every position of the plan has its reading"), outcome);
    assertEquals(1, stored().refused().size());
  }

  @Test
  void aBoreFarFromTheNominalIsHeldKeptAsRefusedAndUsesNoPosition() throws Exception {
    Session session = walked(1);

    Outcome outcome = session.offer(picked(5, 1.51));

    Outcome.Held held = assertInstanceOf(Outcome.Held.class, outcome);
    assertEquals(
        "bore 97.5120 mm is outside 95.5000 to 97.5000 mm; check the gauge, its unit and its"
            + " setting",
        held.why());
    assertEquals(Optional.of(PLAN.get(1)), session.next());
    assertEquals(held.why(), stored().refused().get(0).why());
    assertEquals(1.51, stored().refused().get(0).valueMm());
  }

  @Test
  void aHeldBoreIsTakenWithACautionOnceItIsConfirmed() throws Exception {
    Session session = walked(1);
    Outcome.Held held = (Outcome.Held) session.offer(picked(5, 1.51));

    Outcome.Taken taken = (Outcome.Taken) session.confirm(held);

    assertEquals(PLAN.get(1), taken.position());
    assertEquals(List.of("confirmed at the bench although " + held.why()), taken.cautions());
    assertThrows(IllegalStateException.class, () -> session.confirm(held));
  }

  @Test
  void aRockThatGaveNothingIsKeptAsRefused() throws Exception {
    Session session = walked(1);

    session.offer(new PickEvent.NotPicked(3, List.of(sample(3, 0.2)), "1 rock seen, 3 needed"));

    assertEquals("1 rock seen, 3 needed", stored().refused().get(0).why());
    assertEquals("2b31", stored().refused().get(0).raw());
  }

  @Test
  void bytesThatGaveNoSampleAreKeptAsRefused() throws Exception {
    Session session = walked(1);

    session.refuse(new Rejected(3, Bytes.ofHex("ff00"), "no number in it"));

    assertEquals("ff00", stored().refused().get(0).raw());
    assertEquals(Optional.of(PLAN.get(1)), session.next());
  }

  @Test
  void aSessionResumedSoonGoesOnAtItsNextPosition() throws Exception {
    walked(2);

    Session resumed = Session.resume(ledger, start(), WALL, stored(), 1800);

    assertEquals(Optional.of(PLAN.get(2)), resumed.next());
    assertEquals(2, resumed.done());
    assertEquals(4, resumed.planned());
  }

  @Test
  void aSessionResumedAfterALongPauseGoesBackToTheSettingRingFirst() throws Exception {
    walked(2);

    Session resumed = Session.resume(ledger, start(), WALL, stored(), 1801.1);

    assertEquals(Optional.of(SettingCheck.RESUMING), resumed.next());
    Outcome.Taken check = (Outcome.Taken) resumed.offer(picked(1802, 0.001));
    assertEquals(PLAN.get(2), check.next());
    resumed.offer(picked(1803, 0.01));
    assertEquals(check.entry(), stored().readings().get(3).reading().setting());
  }

  @Test
  void aReadingThatCouldNotBeKeptIsNotTaken() throws Exception {
    Session session = walked(1);
    try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file)) {
      other.createStatement().execute("BEGIN IMMEDIATE");
      assertThrows(LedgerFault.class, () -> session.offer(picked(5, 0.01)));
      other.createStatement().execute("ROLLBACK");
    }

    assertEquals(Optional.of(PLAN.get(1)), session.next());
    assertInstanceOf(Outcome.Taken.class, session.offer(picked(6, 0.01)));
  }

  @Test
  void aGapFarFromAnyGapIsHeldAndASecondSessionKeepsTheFilesOnce() throws Exception {
    SessionStart gaps =
        new SessionStart(
            job(),
            tables(),
            gauge(Reads.SIZE),
            Measure.GAP,
            job().rings().get(0),
            null,
            20.0,
            "a line");
    Session session = Session.open(ledger, gaps, WALL);
    Session.open(ledger, gaps, WALL);

    assertInstanceOf(Outcome.Held.class, session.offer(picked(1, 5.01)));
    assertInstanceOf(Outcome.Refused.class, session.offer(picked(1, -0.01)));
    assertInstanceOf(Outcome.Taken.class, session.offer(picked(1, 5.0)));
    // ledger, job, gauge, 3 tables, 2 sessions, 2 refused, a reading, the end of the plan, this
    assertEquals(13, ledger.append(List.of(end())));
  }

  private static EntryBody end() {
    return new EntryBody.SessionEnded(4, 1, Instant.EPOCH);
  }

  private Session walked(int positions) throws LedgerFault {
    Session session = Session.open(ledger, start(), WALL);
    for (int i = 0; i < positions; i++) {
      session.offer(picked(i, 0.01));
    }
    return session;
  }

  private StoredSession stored() throws LedgerFault {
    try (LedgerView view = ledger.view()) {
      return StoredSession.all(view).get(0);
    }
  }

  private static SessionStart start() {
    return new SessionStart(
        job(), tables(), gauge(Reads.DEVIATION), Measure.BORE, null, 20.4, 21.3, "a line");
  }

  private static PickEvent.Picked picked(double tS, double valueMm) {
    return new PickEvent.Picked(tS, valueMm, null, List.of(sample(tS, valueMm)), List.of());
  }

  private static Sample sample(double tS, double valueMm) {
    return new Sample(tS, Bytes.ofHex("2b31"), valueMm, LengthUnit.MM, false);
  }

  private static GaugeProfile gauge(Reads reads) {
    return new GaugeProfile(
        new ProfileSource("a.gauge.toml", "text", "ab"),
        "A gauge",
        reads,
        LengthUnit.MM,
        0.001,
        0.002,
        Set.of(),
        null,
        LineSettings.DEFAULT,
        null,
        null,
        FlagSpec.NONE,
        List.of(),
        null,
        new PickSpec.Press(5));
  }

  private static Tables tables() {
    try {
      return Tables.of(List.of());
    } catch (FileProblem e) {
      throw new IllegalStateException(e);
    }
  }

  private static Job job() {
    try {
      return new JobFiles(tables()).parse("one.job.toml", JOB);
    } catch (FileProblem e) {
      throw new IllegalStateException(e);
    }
  }

  private static final String JOB =
      """
      format = "boreledger-job/1"
      name = "One cylinder"
      display_unit = "mm"
      [engine]
      cylinders = 1
      arrangement = "inline"
      nominal_bore_mm = 96.0
      stroke_mm = 104.0
      block_material = "grey-iron"
      [limits]
      oversizes_mm = [0.50]
      [plan]
      depths_mm = [12.0]
      axes = ["thrust", "pin"]
      [setting]
      size_mm = 96.002
      expanded_uncertainty_mm = 0.001
      cte_per_k = 11.5e-6
      [[ring]]
      name = "top"
      material = "ductile-iron"
      travel_mm = [9.0, 113.0]
      gap_min_mm = 0.30
      gap_max_mm = 0.60
      target_mm = 0.52
      depths_mm = [12.0]
      """;
}
