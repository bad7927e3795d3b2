package boreledger.station.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.decoder.Rejected;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.LengthUnit;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.Gap;
import boreledger.station.plan.Position.SettingCheck;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Going on with an unfinished session: opening check, thrust and pin axis at one depth, closing
 * check.
 */
class ResumingTest {
  private static final WallClock WALL = WallClock.from(Instant.parse("2031-05-06T08:00:00Z"));
  private static final Position THRUST = new Bore(1, 12, "thrust");
  private static final Position PIN = new Bore(1, 12, "pin");

  @TempDir Path folder;
  private Ledger ledger;

  @BeforeEach
  void openALedger() throws LedgerFault {
    ledger = Ledger.openOrCreate(folder.resolve("bench.db"));
  }

  @AfterEach
  void closeTheLedger() throws LedgerFault {
    ledger.close();
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 1801, 86_400})
  void aSessionWithoutAnyReadingBeginsAtItsOpeningCheckHoweverLongThePause(double tS)
      throws Exception {
    Session.open(ledger, bores(), WALL);

    assertEquals(Optional.of(SettingCheck.OPENING), resume(tS).next());
  }

  @Test
  void aPauseIsLongEvenIfTheProgramWasStartedInBetweenWithoutACheck() throws Exception {
    Session session = Session.open(ledger, bores(), WALL);
    take(session, 0);
    take(session, 10);
    assertEquals(Optional.of(SettingCheck.RESUMING), resume(7200).next());

    Session again = resume(7210);

    assertEquals(Optional.of(SettingCheck.RESUMING), again.next());
  }

  @Test
  void aFrameThatGaveNoReadingDoesNotShortenThePause() throws Exception {
    Session session = Session.open(ledger, bores(), WALL);
    take(session, 0);
    session.refuse(new Rejected(1900, Bytes.ofHex("ff"), "no number in it"));

    assertEquals(Optional.of(SettingCheck.RESUMING), resume(1910).next());
  }

  @Test
  void theCheckAfterALongPauseIsWantedOnce() throws Exception {
    Session session = Session.open(ledger, bores(), WALL);
    take(session, 0);
    take(session, 10);
    Session resumed = resume(7200);
    take(resumed, 7201);

    assertEquals(Optional.of(PIN), resumed.next());
    assertEquals(Optional.of(PIN), resume(7300).next());
  }

  @Test
  void aSecondLongPauseWantsASecondCheck() throws Exception {
    Session session = Session.open(ledger, bores(), WALL);
    take(session, 0);
    take(session, 10);
    take(resume(7200), 7201);
    Session again = resume(14400);

    assertEquals(Optional.of(SettingCheck.RESUMING), again.next());
    take(again, 14401);
    take(again, 14402);
    take(again, 14403);

    assertEquals(Optional.empty(), again.next());
    assertTrue(stored().ended());
    assertEquals(
        List.of("opening", "resuming", "resuming", "closing"),
        stored().readings().stream()
            .map(StoredSession.StoredReading::position)
            .filter(SettingCheck.class::isInstance)
            .map(position -> ((SettingCheck) position).check())
            .toList());
  }

  @Test
  void aReadingAfterTheNewCheckNamesItAsItsSetting() throws Exception {
    Session session = Session.open(ledger, bores(), WALL);
    long opening = take(session, 0);
    take(session, 10);
    Session resumed = resume(7200);
    long resuming = take(resumed, 7201);
    take(resumed, 7202);

    assertEquals(opening, stored().at(THRUST).orElseThrow().reading().setting());
    assertEquals(resuming, stored().at(PIN).orElseThrow().reading().setting());
  }

  @Test
  void aSessionThatOnlyLacksItsClosingCheckEndsWithIt() throws Exception {
    Session session = Session.open(ledger, bores(), WALL);
    take(session, 0);
    take(session, 10);
    take(session, 20);
    Session resumed = resume(30);

    assertEquals(Optional.of(SettingCheck.CLOSING), resumed.next());
    take(resumed, 31);

    assertTrue(stored().ended());
  }

  @Test
  void gapsGoOnWithoutASettingRingAfterALongPause() throws Exception {
    SessionStart gaps =
        new SessionStart(
            SmallJob.standard().job(),
            SmallJob.tables(),
            SmallGauge.size().profile(),
            Measure.GAP,
            SmallJob.standard().job().rings().get(0),
            null,
            20.0,
            "a line");
    Session session = Session.open(ledger, gaps, WALL);
    session.offer(picked(1, 0.45));

    Session resumed = Session.resume(ledger, gaps, WALL, stored(), 7200);

    assertEquals(Optional.of(new Gap(1, "top", 60)), resumed.next());
    assertEquals(1, resumed.done());
    assertEquals(2, resumed.planned());
  }

  private Session resume(double tS) throws LedgerFault {
    return Session.resume(ledger, bores(), WALL, stored(), tS);
  }

  private static long take(Session session, double tS) throws LedgerFault {
    return assertInstanceOf(Outcome.Taken.class, session.offer(picked(tS, 0.01))).entry();
  }

  private StoredSession stored() throws LedgerFault {
    try (LedgerView view = ledger.view()) {
      return StoredSession.all(view).get(0);
    }
  }

  private static SessionStart bores() {
    return new SessionStart(
        SmallJob.atOneDepth().job(),
        SmallJob.tables(),
        SmallGauge.deviation().profile(),
        Measure.BORE,
        null,
        20.0,
        20.0,
        "a line");
  }

  private static PickEvent.Picked picked(double tS, double valueMm) {
    Sample sample = new Sample(tS, Bytes.ofHex("2b31"), valueMm, LengthUnit.MM, false);
    return new PickEvent.Picked(tS, valueMm, null, List.of(sample), List.of());
  }
}
