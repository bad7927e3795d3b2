package boreledger.station.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.LengthUnit;
import boreledger.station.audit.AuditReport;
import boreledger.station.audit.LedgerAudit;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Chosen;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.SettingCheck;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A person gauges in another order than the plan's: opening check, A, B, C, D, closing check. The
 * audit of every ledger made here finds nothing.
 */
class ChosenOrderTest {
  private static final WallClock WALL = WallClock.from(Instant.now());
  private static final String FOOT = "foot switch pressed";
  private static final Bore A = new Bore(1, 12, "thrust");
  private static final Bore B = new Bore(1, 12, "pin");
  private static final Bore C = new Bore(1, 60, "thrust");
  private static final Bore D = new Bore(1, 60, "pin");
  private static final double PUSHED_IN = -1.100;

  @TempDir Path folder;
  private Path file;
  private Ledger ledger;
  private Session session;
  private double tS;

  @BeforeEach
  void openASession() throws Exception {
    file = folder.resolve("bench.db");
    ledger = Ledger.openOrCreate(file);
    session = Session.open(ledger, start("press"), WALL);
  }

  @AfterEach
  void theAuditFindsNothing() throws Exception {
    ledger.close();
    AuditReport report = LedgerAudit.of(file, Map.of(), Set.of(), (entries, of) -> true);
    assertEquals(List.of(), report.findings());
    assertEquals(List.of(), report.notices());
  }

  @Test
  void aSkippedPositionComesAgainAtTheEndBeforeTheClosingCheck() throws Exception {
    press(0.000);

    assertEquals(new Outcome.Skipped(A, B), session.skip(2, FOOT));

    assertEquals(List.of(B, C, D, A, SettingCheck.CLOSING), gaugeTheRest());
    assertTrue(stored().ended());
    assertEquals(6, stored().readings().size());
  }

  @Test
  void severalSkippedPositionsKeepTheirOrder() throws Exception {
    press(0.000);
    session.skip(2, FOOT);
    session.skip(3, FOOT);

    assertEquals(List.of(C, D, A, B, SettingCheck.CLOSING), gaugeTheRest());
  }

  @Test
  void aSkipIsInTheLedgerWithItsReasonAndIsNoRefusedSample() throws Exception {
    press(0.000);

    session.skip(2, FOOT);

    assertEquals(
        List.of(new Chosen(session.id(), B, 2, WALL.at(2), FOOT, null, null, null)), chosen());
    assertEquals(List.of(), stored().refused());
    assertEquals(5, session.planned() - session.done());
  }

  @Test
  void theSettingRingCannotBeSkippedAndNothingIsWritten() throws Exception {
    long head = ledger.headSeq();

    assertEquals(
        new Outcome.NotDone("a check on the setting ring cannot be skipped"),
        session.skip(1, FOOT));

    assertEquals(head, ledger.headSeq());
    assertEquals(Optional.of(SettingCheck.OPENING), session.next());
  }

  @Test
  void theLastPositionBeforeTheClosingCheckCannotBeSkipped() throws Exception {
    gauge(4);

    assertEquals(
        new Outcome.NotDone("this position is the only one left to gauge"), session.skip(9, FOOT));
    press(0.02);
    assertEquals(
        new Outcome.NotDone("a check on the setting ring cannot be skipped"),
        session.skip(9, FOOT));
    press(0.000);
    assertEquals(
        new Outcome.NotDone("every position of the plan has its reading"), session.skip(9, FOOT));
  }

  @Test
  void aSkippedPositionSimplyWaitsWhenTheSessionIsResumed() throws Exception {
    press(0.000);
    session.skip(2, FOOT);
    press(0.020);

    session = Session.resume(ledger, start("press"), WALL, stored(), 10);

    assertEquals(List.of(A, C, D, SettingCheck.CLOSING), gaugeTheRest());
    assertTrue(stored().ended());
  }

  @Test
  void goingToAWaitingPositionLetsThoseBeforeItWaitUntilTheEnd() throws Exception {
    press(0.000);

    assertEquals(new Outcome.GoingTo(C, false), session.goTo(C, 2, FOOT));

    assertEquals(List.of(C, D, A, B, SettingCheck.CLOSING), gaugeTheRest());
  }

  @Test
  void goingToASkippedPositionGoesOnAfterItWhereTheSessionWas() throws Exception {
    gauge(1);
    session.skip(2, FOOT);
    press(0.020);

    session.goTo(A, 4, FOOT);

    assertEquals(List.of(A, C, D, SettingCheck.CLOSING), gaugeTheRest());
  }

  @Test
  void aReadingThatIsGaugedAgainIsTakenBackOnlyByTheNewOne() throws Exception {
    gauge(3);
    long old = stored().at(A).orElseThrow().seq();

    assertEquals(new Outcome.GoingTo(A, true), session.goTo(A, 4, FOOT));
    assertEquals(Optional.of(A), session.next());
    assertEquals(3, session.done(), "the old one still stands");
    assertEquals(old, stored().at(A).orElseThrow().seq());

    Outcome.Taken again = (Outcome.Taken) press(0.031);

    assertEquals(C, again.next());
    assertEquals(3, session.done());
    assertEquals(again.entry(), stored().at(A).orElseThrow().seq());
    assertEquals(old, stored().takenBack().get(0).reading().seq());
    assertEquals("gauged again", stored().takenBack().get(0).by().why());
    gaugeTheRest();
    assertTrue(stored().ended());
  }

  @Test
  void skippingAPositionThatIsGaugedAgainLeavesItsReadingAlone() throws Exception {
    gauge(3);
    long old = stored().at(A).orElseThrow().seq();
    session.goTo(A, 4, FOOT);

    assertEquals(new Outcome.Skipped(A, C), session.skip(5, FOOT));

    assertEquals(old, stored().at(A).orElseThrow().seq());
    assertEquals(List.of(C, D, SettingCheck.CLOSING), gaugeTheRest());
  }

  @Test
  void aPositionCanBeGaugedAgainBeforeTheClosingCheckToo() throws Exception {
    gauge(5);

    session.goTo(B, 6, FOOT);

    assertEquals(List.of(B, SettingCheck.CLOSING), gaugeTheRest());
    assertTrue(stored().ended());
  }

  @Test
  void aReadingGaugedAgainAfterAPauseReplacesThatOfTheEarlierSitting() throws Exception {
    gauge(3);
    session = Session.resume(ledger, start("press"), WALL, stored(), 10);

    session.goTo(A, 11, FOOT);

    assertEquals(List.of(A, C, D, SettingCheck.CLOSING), gaugeTheRest());
    assertEquals(6, stored().readings().size());
    assertEquals(1, stored().takenBack().size());
  }

  @Test
  void aReadingGaugedAgainCanBeTakenBackAndRestored() throws Exception {
    gauge(3);
    session.goTo(A, 4, FOOT);
    Outcome.Taken again = (Outcome.Taken) press(0.031);

    assertEquals(
        new Outcome.TakenBack(again.entry(), A, 0.031), session.takeBackOrRestore(8, FOOT));
    assertEquals(Optional.of(A), session.next());
    assertEquals(
        new Outcome.Restored(again.entry(), A, 0.031, C), session.takeBackOrRestore(9, FOOT));
    gaugeTheRest();
  }

  @Test
  void wheneverNobodyCanGoThereTheReasonIsSaid() throws Exception {
    Bore nowhere = new Bore(9, 12, "thrust");
    notDone("the check on the setting ring comes first", session.goTo(C, 1, FOOT));
    press(0.000);
    notDone("that position is not in the plan", session.goTo(nowhere, 2, FOOT));
    notDone(
        "the setting ring is gauged when its turn comes",
        session.goTo(SettingCheck.CLOSING, 2, FOOT));
    gaugeTheRest();
    notDone("every position of the plan has its reading", session.goTo(C, 9, FOOT));
    assertEquals(List.of(), chosen());
  }

  @Test
  void goingWhereTheSessionIsChangesNothing() throws Exception {
    gauge(2);

    assertEquals(new Outcome.GoingTo(B, false), session.goTo(B, 3, FOOT));

    assertEquals(List.of(), chosen());
  }

  @Test
  void aTakeBackByASwitchSaysSoInTheLedger() throws Exception {
    gauge(2);
    long taken = stored().at(A).orElseThrow().seq();

    assertEquals(new Outcome.TakenBack(taken, A, 0.01), session.takeBackOrRestore(3, FOOT));
    assertEquals(FOOT, stored().takenBack().get(0).by().why());
    assertEquals(null, stored().takenBack().get(0).by().raw());
    assertEquals(new Outcome.Restored(taken, A, 0.01, B), session.takeBackOrRestore(4, FOOT));
    assertEquals(Optional.of(B), session.next());
  }

  @Test
  void withoutAReadingOfThisSittingThereIsNothingToTakeBack() throws Exception {
    gauge(2);
    session = Session.resume(ledger, start("press"), WALL, stored(), 10);

    notDone("there is no reading of this sitting to take back", session.takeBackOrRestore(11, ""));
  }

  @Test
  void aReadingTakenBackAndSkippedComesLastAndCanStillBeRestored() throws Exception {
    gauge(3);
    session.takeBackOrRestore(4, FOOT);
    session.skip(5, FOOT);
    assertEquals(Optional.of(C), session.next());

    assertInstanceOf(Outcome.Restored.class, session.takeBackOrRestore(6, FOOT));

    assertEquals(List.of(C, D, SettingCheck.CLOSING), gaugeTheRest());
  }

  @Test
  void aPressWithThePlungerPushedInSkipsAndTheLedgerKeepsItsBytes() throws Exception {
    press(0.000);

    assertEquals(new Outcome.Skipped(A, B), press(PUSHED_IN));

    Chosen said = chosen().get(0);
    assertEquals("pressed with the plunger pushed in", said.why());
    assertEquals(PUSHED_IN, said.valueMm());
    assertEquals("2d312e3130300a", said.raw());
    assertEquals(List.of(), stored().refused());
  }

  // The window of this job begins at 96.0 - 0.5 mm, the gauge is set on 96.002 mm: -0.502 mm.
  @ParameterizedTest
  @ValueSource(doubles = {-0.503, -0.900, -1.001, -10.503, -92.222})
  void aValueNearTheWindowOrBeyondAnyPlungersTravelIsHeld(double valueMm) throws Exception {
    press(0.000);

    assertInstanceOf(Outcome.Held.class, press(valueMm));

    assertEquals(Optional.of(A), session.next());
    assertEquals(List.of(), chosen());
  }

  @Test
  void atTheSettingRingAPushedInPlungerIsHeldLikeAnyFarValue() throws Exception {
    assertInstanceOf(Outcome.Held.class, press(PUSHED_IN));
    gauge(5);
    assertInstanceOf(Outcome.Held.class, press(PUSHED_IN));
  }

  @Test
  void aRecordedPushedInPlungerIsNoGesture() throws Exception {
    press(0.000);

    assertInstanceOf(Outcome.Held.class, session.offer(picked(PUSHED_IN)));
  }

  @Test
  void onlyTheRulePressHasTheGesture() throws Exception {
    session = Session.open(ledger, start("settle"), WALL);
    session.offerLive(still(0.000));

    assertInstanceOf(Outcome.Held.class, session.offerLive(still(PUSHED_IN)));
  }

  @Test
  void aValueBegunBeforeASkipIsNotThatOfTheNextPosition() throws Exception {
    session = Session.open(ledger, start("settle"), WALL);
    session.offerLive(still(0.000));
    session.skip(2.1, FOOT);

    // Its samples come at 2, 2.25 and 2.5 s.
    Outcome begunBefore = session.offerLive(still(0.010));

    assertEquals(new Outcome.Refused(2.25, B, Session.BEGUN_BEFORE), begunBefore);
    assertEquals(1, stored().refused().size());
    assertEquals(B, ((Outcome.Taken) session.offerLive(still(0.020))).position());
  }

  @Test
  void aValueBegunBeforeATakeBackIsNotThatOfTheEarlierPosition() throws Exception {
    session = Session.open(ledger, start("settle"), WALL);
    session.offerLive(still(0.000));
    session.offerLive(still(0.010));
    session.takeBackOrRestore(3.1, FOOT);

    assertInstanceOf(Outcome.Refused.class, session.offerLive(still(0.015)));

    assertEquals(Optional.of(A), session.next());
    session.takeBackOrRestore(4.1, FOOT);
    assertInstanceOf(Outcome.Refused.class, session.offerLive(still(0.015)));
    assertEquals(B, ((Outcome.Taken) session.offerLive(still(0.015))).position());
  }

  @Test
  void aValueBegunBeforeGoingElsewhereIsNotThatOfThere() throws Exception {
    session = Session.open(ledger, start("settle"), WALL);
    session.offerLive(still(0.000));
    session.goTo(D, 2.1, FOOT);

    assertInstanceOf(Outcome.Refused.class, session.offerLive(still(0.010)));

    assertEquals(D, ((Outcome.Taken) session.offerLive(still(0.020))).position());
  }

  private static void notDone(String why, Outcome outcome) {
    assertEquals(new Outcome.NotDone(why), outcome);
  }

  private void gauge(int positions) throws Exception {
    for (int i = 0; i < positions; i++) {
      press(i == 0 ? 0.000 : 0.01);
    }
  }

  /** Gauges to the end of the plan; answers where. */
  private List<Position> gaugeTheRest() throws Exception {
    List<Position> gauged = new ArrayList<>();
    while (session.next().isPresent()) {
      Outcome.Taken taken = (Outcome.Taken) press(0.02);
      gauged.add(taken.position());
    }
    return gauged;
  }

  private Outcome press(double valueMm) throws Exception {
    return session.offerLive(picked(valueMm));
  }

  private List<Chosen> chosen() throws Exception {
    List<Chosen> chosen = new ArrayList<>();
    try (LedgerView view = ledger.view()) {
      for (var entry : view.ofSession(session.id())) {
        EntryBody body = entry.body();
        if (body instanceof Chosen said) {
          chosen.add(said);
        }
      }
    }
    return chosen;
  }

  private StoredSession stored() throws Exception {
    try (LedgerView view = ledger.view()) {
      return StoredSession.some(view, id -> id == session.id()).get(0);
    }
  }

  private static SessionStart start(String rule) {
    return new SessionStart(
        SmallJob.standard().job(),
        SmallJob.tables(),
        SmallGauge.deviation().with("rule = \"press\"", "rule = \"" + rule + "\"").profile(),
        Measure.BORE,
        null,
        20.0,
        20.0,
        "a line");
  }

  private PickEvent.Picked picked(double valueMm) {
    tS++;
    return new PickEvent.Picked(tS, valueMm, null, List.of(sample(tS, valueMm)), List.of());
  }

  /** Three equal samples, as a gauge held still gives them. */
  private PickEvent.Picked still(double valueMm) {
    tS++;
    List<Sample> samples =
        List.of(sample(tS, valueMm), sample(tS + 0.25, valueMm), sample(tS + 0.5, valueMm));
    return new PickEvent.Picked(tS + 0.25, valueMm, 0.0, samples, List.of());
  }

  private static Sample sample(double atS, double valueMm) {
    String text = String.format(Locale.ROOT, "%+.3f\n", valueMm);
    Bytes raw = Bytes.of(text.getBytes(StandardCharsets.US_ASCII));
    return new Sample(atS, raw, valueMm, LengthUnit.MM, false);
  }
}
