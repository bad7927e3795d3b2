package boreledger.station.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.LengthUnit;
import boreledger.station.ledger.EntryBody.SessionResumed;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Plan;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.Correction.NotPossible;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings are taken back, restored and moved; nothing is erased. */
class TakeBackTest {
  private static final WallClock WALL = WallClock.from(Instant.parse("2031-05-06T08:00:00Z"));
  private static final Clock LATER =
      Clock.fixed(Instant.parse("2031-05-06T12:00:00Z"), ZoneOffset.UTC);
  private static final Bore THRUST = new Bore(1, 12, "thrust");
  private static final Bore PIN = new Bore(1, 12, "pin");
  private static final double IN_FREE_AIR = 1.600;

  @TempDir Path folder;
  private Ledger ledger;
  private Session session;

  @BeforeEach
  void open() throws Exception {
    ledger = Ledger.openOrCreate(folder.resolve("bench.db"));
    session = Session.open(ledger, start(SmallGauge.deviation()), WALL);
  }

  @AfterEach
  void close() throws Exception {
    ledger.close();
  }

  @Test
  void aPressInFreeAirTakesTheLastReadingBackAndItsPositionIsNextAgain() throws Exception {
    press(0, 0.000);
    Outcome.Taken taken = (Outcome.Taken) press(1, 0.028);

    Outcome back = press(2, IN_FREE_AIR);

    assertEquals(new Outcome.TakenBack(taken.entry(), THRUST, 0.028), back);
    assertEquals(Optional.of(THRUST), session.next());
    assertEquals(1, session.done());
    assertEquals(4, session.planned());
    assertTrue(stored().at(THRUST).isEmpty());
    assertEquals(List.of(), stored().refused(), "the gesture is no refused sample");
    TakenBack said = stored().takenBack().get(0).by();
    assertEquals(
        new TakenBack(
            session.id(),
            taken.entry(),
            2.0,
            WALL.at(2),
            "pressed in free air",
            null,
            "2b312e3630300a",
            IN_FREE_AIR),
        said);
  }

  @Test
  void theSameGestureRestoresItAndOnceMoreTakesItBack() throws Exception {
    press(0, 0.000);
    Outcome.Taken taken = (Outcome.Taken) press(1, 0.028);
    press(2, IN_FREE_AIR);

    assertEquals(new Outcome.Restored(taken.entry(), THRUST, 0.028, PIN), press(3, IN_FREE_AIR));
    assertEquals(taken.entry(), stored().at(THRUST).orElseThrow().seq());
    assertEquals(Optional.of(PIN), session.next());

    assertInstanceOf(Outcome.TakenBack.class, press(4, IN_FREE_AIR));
    assertEquals(Optional.of(THRUST), session.next());
  }

  @Test
  void theGestureIsOneDeep() throws Exception {
    press(0, 0.000);
    press(1, 0.028);
    press(2, 0.022);
    press(3, IN_FREE_AIR);
    press(4, 0.023);

    Outcome.TakenBack back = (Outcome.TakenBack) press(5, IN_FREE_AIR);

    assertEquals(PIN, back.position());
    assertEquals(0.023, back.valueMm(), "the one that replaced it, not the one before");
    assertInstanceOf(Outcome.Restored.class, press(6, IN_FREE_AIR));
  }

  @Test
  void theZeroInForceFollowsASettingCheckThatIsTakenBackAndRestored() throws Exception {
    Outcome.Taken first = (Outcome.Taken) press(0, 0.001);
    press(1, IN_FREE_AIR);
    assertEquals(Optional.of(SettingCheck.OPENING), session.next());
    press(2, IN_FREE_AIR);
    press(3, 0.028);

    assertEquals(first.entry(), stored().at(THRUST).orElseThrow().reading().setting());
  }

  @Test
  void withoutAReadingOfThisSittingAFarValueIsHeldAsEver() throws Exception {
    assertInstanceOf(Outcome.Held.class, press(0, IN_FREE_AIR));

    press(1, 0.000);
    session = Session.resume(ledger, start(SmallGauge.deviation()), WALL, stored(), 2);
    assertInstanceOf(Outcome.Held.class, press(3, IN_FREE_AIR));
    assertEquals(1, stored().readings().size());
  }

  @Test
  void aValueBelowEveryBoreIsNoGesture() throws Exception {
    press(0, 0.000);

    assertInstanceOf(Outcome.Held.class, press(1, -0.600));
    assertEquals(1, stored().readings().size());
  }

  @Test
  void aRecordedFarValueIsNoGesture() throws Exception {
    press(0, 0.000);

    assertInstanceOf(Outcome.Held.class, session.offer(picked(1, IN_FREE_AIR)));
    assertEquals(1, stored().refused().size());
    assertEquals(1, stored().readings().size());
  }

  @Test
  void aRuleThatKnowsFreeAirItselfHasNoGesture() throws Exception {
    SmallGauge rocked = SmallGauge.deviation().with("rule = \"press\"", "rule = \"rock\"");
    session = Session.open(ledger, start(rocked), WALL);
    press(0, 0.000);

    assertInstanceOf(Outcome.Held.class, press(1, IN_FREE_AIR));
  }

  @Test
  void aReadingTakenBackAfterTheEndIsGaugedAgainAndTheSessionClosesOnceMore() throws Exception {
    long pin = gaugeAll();
    assertTrue(stored().ended());

    correction().takeBack(pin);
    assertFalse(stored().ended());
    assertTrue(stored().reopened());

    session = Session.resume(ledger, start(SmallGauge.deviation()), WALL, stored(), 10);
    assertEquals(Optional.of(PIN), session.next());
    press(11, 0.024);
    assertEquals(Optional.of(SettingCheck.CLOSING), session.next());
    assertFalse(stored().ended());
    press(12, 0.002);
    assertEquals(Optional.empty(), session.next());
    assertTrue(stored().ended());
    assertEquals(0.024, stored().at(PIN).orElseThrow().reading().valueMm());
    assertEquals(0.002, stored().at(SettingCheck.CLOSING).orElseThrow().reading().valueMm());
  }

  @Test
  void aReadingRestoredAfterTheEndEndsTheSessionAgain() throws Exception {
    long pin = gaugeAll();
    correction().takeBack(pin);

    correction().restore(pin);

    assertTrue(stored().ended());
    assertEquals(pin, stored().at(PIN).orElseThrow().seq());
    assertEquals(List.of(), stored().takenBack());
  }

  @Test
  void twoReadingsSwappedByMovingThemStandWhereTheyWereTaken() throws Exception {
    long pin = gaugeAll();
    long thrust = pin - 1;
    List<Position> plan = Plan.of(SmallJob.atOneDepth().job(), Measure.BORE, null);

    correction().takeBack(thrust);
    correction().move(pin, THRUST, plan);
    assertFalse(stored().ended(), "there is a hole for a moment");
    correction().restore(thrust);
    correction().move(thrust, PIN, plan);

    assertTrue(stored().ended());
    assertEquals(pin, stored().at(THRUST).orElseThrow().seq());
    assertEquals(thrust, stored().at(PIN).orElseThrow().seq());
    assertEquals(
        List.of(
            "moved here from cylinder 1, 12 mm below the deck, thrust axis by entry "
                + ledger.headSeq()
                + ": chip (A. Turner, "
                + LATER.instant()
                + ")"),
        stored().at(PIN).orElseThrow().reading().cautions());
  }

  @Test
  void anAmendedTemperatureHoldsFromItsMomentOn() throws Exception {
    gaugeAll();

    correction().amend(session.id(), new Change(1.5, null, 24.5, null));

    assertEquals(20.0, stored().stintAt(1).blockTempC());
    assertEquals(24.5, stored().stintAt(2).blockTempC());
    assertEquals(20.0, stored().stintAt(2).settingTempC());
  }

  @Test
  void anAmendedTemperatureCarriesOverAResumptionThatToldNone() throws Exception {
    gaugeAll();
    long id = session.id();
    ledger.append(new SessionResumed(id, 10, LATER.instant(), null, 23.0, "a line", "0"));

    correction().amend(id, new Change(0, 21.0, 22.0, null));

    assertEquals(22.0, stored().stintAt(5).blockTempC());
    assertEquals(23.0, stored().stintAt(11).blockTempC(), "it was given its own");
    assertEquals(21.0, stored().stintAt(11).settingTempC());
  }

  @Test
  void ofTwoAmendmentsOfOneMomentTheLaterOneHoldsAndBothAreKept() throws Exception {
    gaugeAll();

    correction().amend(session.id(), new Change(0, 21.0, null, null));
    correction().amend(session.id(), new Change(0, 22.0, null, null));

    assertEquals(22.0, stored().stintAt(3).settingTempC());
    assertEquals(
        List.of(20.0, 21.0),
        stored().amendments().stream().map(each -> each.before().settingTempC()).toList());
  }

  @Test
  void aPlaceThatHasAReadingTakesNoSecondOne() throws Exception {
    long pin = gaugeAll();
    List<Position> plan = Plan.of(SmallJob.atOneDepth().job(), Measure.BORE, null);

    refused(
        THRUST.words() + " has a reading, entry " + (pin - 1) + "; take it back first",
        () -> correction().move(pin, THRUST, plan));
    refused(
        "entry " + pin + " stands at " + PIN.words() + " already",
        () -> correction().move(pin, PIN, plan));
  }

  @Test
  void aSessionIsNotAmendedToWhatCannotBe() throws Exception {
    gaugeAll();
    long id = session.id();

    refused(
        "nothing to amend: name a temperature or a job",
        () -> correction().amend(id, new Change(0, null, null, null)));
    refused(
        "the block's temperature of 451.0 °C lies outside -40.0 … 80.0 °C",
        () -> correction().amend(id, new Change(0, null, 451.0, null)));
    refused(
        "the setting ring's temperature of NaN °C lies outside -40.0 … 80.0 °C",
        () -> correction().amend(id, new Change(0, Double.NaN, null, null)));
    refused(
        "99.0 s is no moment of session " + id + ", which ends at 3.0 s",
        () -> correction().amend(id, new Change(99, 21.0, null, null)));
    refused(
        "session " + id + " says just that already",
        () -> correction().amend(id, new Change(0, 20.0, null, null)));
  }

  @Test
  void whatCannotBeCorrectedIsRefusedAndWritesNothing() throws Exception {
    long pin = gaugeAll();
    long head = ledger.headSeq();
    List<Position> plan = Plan.of(SmallJob.atOneDepth().job(), Measure.BORE, null);

    refused("entry 1 is no reading", () -> correction().takeBack(1));
    refused("entry 999 is no reading", () -> correction().takeBack(999));
    refused("entry " + pin + " was not taken back", () -> correction().restore(pin));
    refused(
        "entry " + pin + " cannot be moved to setting ring, opening check",
        () -> correction().move(pin, SettingCheck.OPENING, plan));
    refused("entry 3 is no session", () -> correction().amend(3, new Change(0, 21.0, null, null)));
    refused(
        "a correction needs a reason and a name",
        () -> new Correction(ledger, " ", "A. Turner", LATER).takeBack(pin));
    assertEquals(head, ledger.headSeq());
  }

  @Test
  void aReadingIsNotTakenBackTwice() throws Exception {
    long pin = gaugeAll();
    correction().takeBack(pin);

    refused("entry " + pin + " was taken back already", () -> correction().takeBack(pin));
  }

  private interface Correcting {
    void run() throws Exception;
  }

  private static void refused(String why, Correcting correcting) {
    assertEquals(why, assertThrows(NotPossible.class, correcting::run).getMessage());
  }

  /** Gauges the whole plan; answers the entry of the reading on the pin axis. */
  private long gaugeAll() throws Exception {
    press(0, 0.000);
    press(1, 0.028);
    Outcome.Taken pin = (Outcome.Taken) press(2, 0.022);
    press(3, 0.001);
    return pin.entry();
  }

  private Correction correction() {
    return new Correction(ledger, "chip", "A. Turner", LATER);
  }

  private Outcome press(double tS, double valueMm) throws Exception {
    return session.offerLive(picked(tS, valueMm));
  }

  private StoredSession stored() throws Exception {
    try (LedgerView view = ledger.view()) {
      List<StoredSession> all = StoredSession.all(view);
      return all.get(all.size() - 1);
    }
  }

  private static SessionStart start(SmallGauge gauge) {
    return new SessionStart(
        SmallJob.atOneDepth().job(),
        SmallJob.tables(),
        gauge.profile(),
        Measure.BORE,
        null,
        20.0,
        20.0,
        "a line");
  }

  private static PickEvent.Picked picked(double tS, double valueMm) {
    String text = String.format(Locale.ROOT, "%+.3f\n", valueMm);
    Bytes raw = Bytes.of(text.getBytes(StandardCharsets.US_ASCII));
    Sample sample = new Sample(tS, raw, valueMm, LengthUnit.MM, false);
    return new PickEvent.Picked(tS, valueMm, null, List.of(sample), List.of());
  }
}
