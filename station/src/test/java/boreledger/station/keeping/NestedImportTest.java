package boreledger.station.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.app.LedgerBook;
import boreledger.station.app.SessionChange;
import boreledger.station.audit.AuditReport;
import boreledger.station.audit.AuditedLedger;
import boreledger.station.audit.LedgerAudit;
import boreledger.station.audit.Remark;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.LedgerView;
import boreledger.station.session.Correction.NotPossible;
import boreledger.station.session.SmallJob;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A ledger that imports a ledger that had imported a ledger: c has b's entries, b has a's. */
class NestedImportTest {
  private static final SmallJob OTHER = SmallJob.standard().with("Small engine", "Other engine");

  /** Of the small engine's bores and gaps. */
  private static final long READINGS = 8;

  /** After b's own 19 entries, its import's opening and a's first 8, all of them behind c's 2. */
  private static final long A_BORE_IN_C = 2 + 19 + 1 + AuditedLedger.BORE;

  @TempDir Path folder;
  private Shop shop;

  @BeforeEach
  void open() {
    shop = new Shop(folder);
  }

  @Test
  void readingsDeepInsideAreComputedAgain() throws Exception {
    importThrough("a.db");

    AuditReport report = audit("c.db");
    assertEquals(List.of(), report.findings());
    // The shops' clock is set ahead of this machine's, which an audit notices.
    assertEquals(
        List.of(),
        report.notices().stream()
            .filter(each -> !each.what().endsWith("which is yet to come"))
            .toList());
    assertEquals(2 * READINGS, report.recomputed(), "b's own and a's");
    assertEquals(0, report.differing());
    assertEquals(List.of("Other engine"), report.resultsOf(), "a's sessions count in b alone");
  }

  @Test
  void aLieThatCameThroughTwoImportsIsFoundWhereItIs() throws Exception {
    shop.gauged("a.db", SmallJob.standard());
    AuditedLedger.at(shop.file("a.db"))
        .exchanged(
            AuditedLedger.BORE, "\"value_mm\":0.028,\"standard", "\"value_mm\":0.018,\"standard")
        .rechained();
    importThrough("a.db");

    AuditReport report = audit("c.db");
    assertEquals(1, report.differing());
    assertEquals(
        List.of(
            new Remark(
                A_BORE_IN_C,
                "in what ledger "
                    + id("b.db")
                    + " had imported, by its numbers: value_mm is stored as 0.018, computed again"
                    + " as 0.028")),
        report.findings());
  }

  @Test
  void aLieFourLedgersDeepIsFound() throws Exception {
    shop.gauged("a.db", SmallJob.standard());
    AuditedLedger.at(shop.file("a.db")).exchanged(8, "\"t_s\":10.0,\"wall", "\"t_s\":11.0,\"wall");
    AuditedLedger.at(shop.file("a.db")).rechained();
    importThrough("a.db");
    shop.fresh("d.db");
    shop.imported("d.db", shop.exported("c.db"));

    AuditReport report = audit("d.db");
    assertEquals(2 * READINGS, report.recomputed());
    assertEquals(1, report.differing());
    assertTrue(
        report.findings().get(0).what().contains("had imported, by its numbers: t_s is stored as"),
        report.findings()::toString);
  }

  @Test
  void aListOfSessionsHasImportedOnesWithWhatWasSaidInThem() throws Exception {
    importThrough("a.db");

    try (LedgerView view = LedgerView.open(shop.file("b.db"))) {
      List<Entry> before = view.sessionsBefore(LedgerBook.END, 200);
      assertEquals(4, before.size(), "two of its own and two of a's");
      assertEquals(2, view.sessionsBefore(before.get(2).seq(), 200).size());
      assertEquals(1, view.sessionsBefore(LedgerBook.END, 1).size());
      for (Entry opening : before) {
        List<Entry> said = view.ofSessionBefore(opening.seq(), LedgerBook.END, 100);
        assertEquals(view.ofSession(opening.seq()), said);
        assertEquals(2, view.ofSessionBefore(opening.seq(), said.get(2).seq(), 100).size());
        long readings = said.stream().filter(each -> each.body() instanceof ReadingTaken).count();
        assertTrue(readings == 6 || readings == 2, said::toString);
      }
    }
  }

  @Test
  void whatWasImportedIsCorrectedInItsOwnLedgerAndTheRefusalSaysSo() throws Exception {
    importThrough("a.db");
    LedgerBook b = new LedgerBook(shop.file("b.db"));
    long entries = entries("b.db");
    long bore = 19 + 1 + AuditedLedger.BORE;
    String why =
        "entry "
            + bore
            + " is entry 9 of ledger "
            + id("a.db")
            + "; correct it there and import that ledger's new export";

    assertEquals(why, refused(() -> b.takeBack(bore, "chip", "A. Turner", Shop.NOON)));
    assertEquals(why, refused(() -> b.restore(bore, "no chip", "A. Turner", Shop.NOON)));
    assertEquals(
        why, refused(() -> b.move(bore, "cylinder 1, 12 mm, pin", "chip", "A. Turner", Shop.NOON)));
    SessionChange warmer = new SessionChange(null, 25.0, null, null);
    assertTrue(
        refused(() -> b.amend(bore - 2, warmer, "chip", "A. Turner", Shop.NOON))
            .startsWith("entry " + (bore - 2) + " is entry 7 of ledger "));
    assertEquals(entries, entries("b.db"));
  }

  @Test
  void aCorrectionInItsOwnLedgerComesWithTheNextImport() throws Exception {
    importThrough("a.db");
    new LedgerBook(shop.file("a.db"))
        .amend(7, new SessionChange(null, 30.0, null, null), "hot", "A. Turner", Shop.NOON);
    new LedgerBook(shop.file("a.db")).takeBack(9, "chip", "A. Turner", Shop.NOON);

    shop.imported("b.db", shop.exported("a.db"));

    for (String part : List.of("cylinders", "gauges")) {
      assertEquals(
          shop.results("a.db", null).path(part), shop.results("b.db", "Small engine").path(part));
    }
    AuditReport report = audit("b.db");
    assertEquals(List.of(), report.findings());
    assertEquals(1, report.takenBack().size());
    assertEquals(1, report.corrected().size());
  }

  @Test
  void anEarlierImportedSessionsAmendedConditionsAreTheOnesThatAreCompared() throws Exception {
    SmallJob bare = SmallJob.standard().with("[limits]", "condition = \"bare\"\n[limits]");
    shop.gauged("a.db", bare);
    shop.gauged("a.db", bare);
    String plate = bare.with("\"bare\"", "\"torque-plate\"").text();
    Path file = Files.writeString(folder.resolve("plate.job.toml"), plate);
    new LedgerBook(shop.file("a.db"))
        .amend(7, new SessionChange(null, null, null, file), "was on", "A. Turner", Shop.NOON);
    shop.fresh("b.db");

    shop.imported("b.db", shop.exported("a.db"));

    String cautions = shop.results("b.db", null).path("cautions").toString();
    assertTrue(cautions.contains("Session 9 (bore) was gauged with torque"), cautions);
  }

  private interface Correcting {
    void run() throws Exception;
  }

  private static String refused(Correcting correcting) {
    return assertThrows(NotPossible.class, correcting::run).getMessage();
  }

  /** Brings a ledger, gauged here unless it is there, into b.db and that into c.db. */
  private void importThrough(String name) throws Exception {
    if (!shop.file(name).toFile().exists()) {
      shop.gauged(name, SmallJob.standard());
    }
    shop.gauged("b.db", OTHER);
    shop.imported("b.db", shop.exported(name));
    shop.fresh("c.db");
    shop.imported("c.db", shop.exported("b.db"));
  }

  private AuditReport audit(String name) throws Exception {
    return LedgerAudit.of(shop.file(name), Map.of(), Set.of(), (at, of) -> true);
  }

  private String id(String name) throws Exception {
    try (LedgerView view = LedgerView.open(shop.file(name))) {
      return view.id();
    }
  }

  private long entries(String name) throws Exception {
    try (LedgerView view = LedgerView.open(shop.file(name))) {
      return view.entries();
    }
  }
}
