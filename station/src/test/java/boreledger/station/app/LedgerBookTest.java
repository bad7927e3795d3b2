package boreledger.station.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.capture.Measure;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.plan.Position;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LedgerBookTest {
  private static final Instant WALL = Instant.parse("2031-05-06T08:00:00Z");
  private static final int SESSIONS = 450;
  private static final int READINGS = 4;

  @TempDir Path folder;
  private LedgerBook book;
  private Path file;

  @BeforeEach
  void manySessions() throws LedgerFault {
    file = folder.resolve("many.db");
    book = new LedgerBook(file);
    try (Ledger ledger = Ledger.openOrCreate(file)) {
      List<EntryBody> bodies = new ArrayList<>();
      for (int i = 0; i < SESSIONS; i++) {
        long session = ledger.headSeq() + bodies.size() + 1;
        bodies.add(session(i));
        for (int j = 0; j < READINGS; j++) {
          bodies.add(reading(session, j));
        }
      }
      ledger.append(bodies);
    }
  }

  @Test
  void sessionsComePageByPageNewestFirstAndNoneTwice() throws LedgerFault {
    List<Long> seen = new ArrayList<>();
    long before = LedgerBook.END;
    boolean more = true;
    while (more) {
      LedgerPage<SessionLine> page = book.sessions(session -> true, before, 100);
      assertTrue(page.lines().size() <= 100);
      page.lines().forEach(session -> seen.add(session.id()));
      before = seen.get(seen.size() - 1);
      more = page.more();
    }

    assertEquals(SESSIONS, seen.size());
    for (int i = 1; i < seen.size(); i++) {
      assertTrue(seen.get(i) < seen.get(i - 1), "at " + i + " of " + seen);
    }
  }

  @Test
  void aSearchGoesOnUntilItsPageIsFull() throws LedgerFault {
    LedgerPage<SessionLine> found =
        book.sessions(session -> session.opened().jobName().endsWith("7"), LedgerBook.END, 20);

    assertEquals(20, found.lines().size());
    assertEquals("job 447", found.lines().get(0).opened().jobName());
    assertEquals(READINGS, found.lines().get(0).entries());
    assertTrue(found.more());
  }

  @Test
  void theLastEntriesOfASessionComeFirstAndEarlierOnesOnDemand() throws LedgerFault {
    long session = book.sessions(each -> true, LedgerBook.END, 1).lines().get(0).id();

    LedgerPage<Entry> last = book.entries(session, LedgerBook.END, 3);
    LedgerPage<Entry> earlier = book.entries(session, last.lines().get(0).seq(), 3);

    assertEquals(List.of(session + 2, session + 3, session + 4), numbers(last));
    assertTrue(last.more());
    assertEquals(List.of(session + 1), numbers(earlier));
    assertFalse(earlier.more());
  }

  @Test
  void aReadingThatWasReadAgainDoesNotCountAndOneTakenBackLetsTheEarlierCount() throws Exception {
    long session = book.sessions(each -> true, LedgerBook.END, 1).lines().get(0).id();
    try (Ledger ledger = Ledger.open(file)) {
      ledger.append(reading(session, 0));
    }
    List<EntryLine> lines = lines(session);
    assertEquals(Standing.READ_AGAIN, lines.get(0).standing());
    assertEquals(Standing.IN_FORCE, lines.get(4).standing());

    book.takeBack(lines.get(4).entry().seq(), "chip", "A. Turner", java.time.Clock.systemUTC());

    assertEquals(Standing.IN_FORCE, lines(session).get(0).standing());
    assertEquals(Standing.TAKEN_BACK, lines(session).get(4).standing());
    assertEquals("chip", lines(session).get(4).takenBack().why());
  }

  private List<EntryLine> lines(long session) throws LedgerFault {
    return SessionStory.of(book.entries(session, LedgerBook.END, 50).lines());
  }

  private static List<Long> numbers(LedgerPage<Entry> page) {
    return page.lines().stream().map(Entry::seq).toList();
  }

  private static SessionOpened session(int number) {
    return new SessionOpened(
        "job " + number, "0", "0", List.of(), Measure.GAP, "top", WALL, null, null, "line", "0");
  }

  private static ReadingTaken reading(long session, int number) {
    return new ReadingTaken(
        session,
        new Position.Gap(1, "top", 10 + number),
        number,
        WALL,
        0.4,
        null,
        "press",
        null,
        List.of(),
        List.of());
  }
}
