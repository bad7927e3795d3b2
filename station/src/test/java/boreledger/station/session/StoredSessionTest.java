package boreledger.station.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.LineBroke;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SampleRefused;
import boreledger.station.ledger.EntryBody.SessionEnded;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.EntryBody.SessionResumed;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.Bore;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StoredSessionTest {
  private static final Instant WALL = Instant.parse("2031-05-06T08:00:00Z");
  private static final Position THRUST = new Bore(1, 12, "thrust");

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

  @Test
  void aLedgerWithoutSessionsHasNone() throws Exception {
    assertEquals(List.of(), all());
  }

  @Test
  void theReadingInForceIsTheLastOneTakenThere() throws Exception {
    long session = open("first");
    ledger.append(reading(session, THRUST, 1, 0.01));
    long second = ledger.append(reading(session, THRUST, 2, 0.02));
    ledger.append(reading(session, new Bore(1, 12, "pin"), 3, 0.03));

    StoredSession stored = all().get(0);

    assertEquals(second, stored.at(THRUST).orElseThrow().seq());
    assertEquals(0.02, stored.at(THRUST).orElseThrow().reading().valueMm());
    assertEquals(3, stored.readings().size());
    assertEquals(Optional.empty(), stored.at(new Bore(2, 12, "thrust")));
  }

  @Test
  void interleavedSessionsKeepTheirOwnReadingsInTheOrderTheyWereOpened() throws Exception {
    long one = open("one");
    long other = open("other");
    ledger.append(reading(other, THRUST, 1, 0.2));
    ledger.append(reading(one, THRUST, 1, 0.1));
    ledger.append(new SessionEnded(other, 2, WALL));

    List<StoredSession> all = all();

    assertEquals(List.of(one, other), all.stream().map(StoredSession::id).toList());
    assertEquals(0.1, all.get(0).at(THRUST).orElseThrow().reading().valueMm());
    assertEquals(0.2, all.get(1).at(THRUST).orElseThrow().reading().valueMm());
    assertFalse(all.get(0).ended());
    assertTrue(all.get(1).ended());
  }

  @Test
  void whatBecameNoReadingIsKeptApart() throws Exception {
    long session = open("one");
    SampleRefused refused = new SampleRefused(session, 3, WALL, "ff", null, "no number in it");
    ledger.append(refused);

    assertEquals(List.of(refused), all().get(0).refused());
    assertEquals(List.of(), all().get(0).readings());
  }

  static Stream<EntryBody> entriesAtSeven() {
    return Stream.of(
        reading(2, THRUST, 7, 0.01),
        new SampleRefused(2, 7, WALL, "ff", null, "why"),
        new SessionResumed(2, 7, WALL, null, null, "a line", null),
        new LineBroke(2, 7, WALL, "why"),
        new SessionEnded(2, 7, WALL));
  }

  @ParameterizedTest
  @MethodSource("entriesAtSeven")
  void everyKindOfEntryMovesTheSessionsClockAndNoneMovesItBack(EntryBody entry) throws Exception {
    assertEquals(2, open("one"));
    ledger.append(entry);
    assertEquals(7, all().get(0).lastTS());

    ledger.append(new SampleRefused(2, 5, WALL, "ff", null, "a rock that began before"));

    assertEquals(7, all().get(0).lastTS());
  }

  private long open(String jobName) throws LedgerFault {
    return ledger.append(
        new SessionOpened(
            jobName, "ab", "cd", List.of(), Measure.BORE, null, WALL, 20.0, 20.0, "a line", "0"));
  }

  private static ReadingTaken reading(long session, Position at, double tS, double valueMm) {
    return new ReadingTaken(
        session, at, tS, WALL, valueMm, null, "press", null, List.of(), List.of());
  }

  private List<StoredSession> all() throws LedgerFault {
    try (LedgerView view = ledger.view()) {
      return StoredSession.all(view);
    }
  }
}
