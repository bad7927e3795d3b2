package boreledger.station.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.file.FileProblem;
import boreledger.station.app.BenchFolder;
import boreledger.station.app.Replay;
import boreledger.station.audit.LedgerAudit;
import boreledger.station.ledger.ChainReader;
import boreledger.station.ledger.EntryBody.ImportedEntry;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.ImportedChains;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.session.SmallJob;
import boreledger.station.session.StoredSession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ImportTest {
  private static final SmallJob JOB = SmallJob.standard();
  private static final SmallJob OTHER = JOB.with("Small engine", "Other engine");

  @TempDir Path folder;
  private Shop shop;

  @BeforeEach
  void openTheShop() {
    shop = new Shop(folder);
  }

  @Test
  void resultsInAFreshLedgerAreTheOriginals() throws Exception {
    shop.gauged("a.db", JOB);
    shop.fresh("b.db");

    shop.imported("b.db", shop.exported("a.db"));

    assertEquals(shop.results("a.db", null), shop.results("b.db", null));
  }

  @Test
  void resultsBesideOtherJobsAreTheOriginals() throws Exception {
    shop.gauged("a.db", JOB);
    shop.gauged("b.db", OTHER);
    String before = shop.results("b.db", "Other engine").toString();

    Import.Report report = shop.imported("b.db", shop.exported("a.db"));

    assertEquals(shop.results("a.db", null), shop.results("b.db", "Small engine"));
    assertEquals(before, shop.results("b.db", "Other engine").toString());
    assertEquals(2, report.sessions());
    assertEquals(8, report.readings());
  }

  @Test
  void anImportedSessionHasTheNumberOfItsOwnOpening() throws Exception {
    shop.gauged("a.db", JOB);
    shop.gauged("b.db", OTHER);
    shop.imported("b.db", shop.exported("a.db"));

    int imported = 0;
    try (LedgerView view = LedgerView.open(shop.file("b.db"))) {
      for (StoredSession session : StoredSession.all(view)) {
        if (view.isImported(session.id())) {
          imported++;
          ImportedEntry opening = (ImportedEntry) view.entry(session.id()).orElseThrow().body();
          assertTrue(opening.body().startsWith("{\"kind\":\"session\""), opening::body);
          session.readings().stream()
              .filter(each -> each.reading().setting() != null)
              .forEach(
                  each ->
                      assertEquals(
                          session.readings().get(0).seq(), each.reading().setting().longValue()));
        }
      }
    }
    assertEquals(2, imported);
  }

  @Test
  void theForeignChainFollowsFromTheStoredBodies() throws Exception {
    shop.gauged("a.db", JOB);
    shop.gauged("b.db", OTHER);
    shop.imported("b.db", shop.exported("a.db"));

    assertEquals(List.of(), chainFaults("b.db"));
    assertTrue(LedgerAudit.of(shop.file("b.db"), Map.of(), Set.of(), (at, of) -> true).intact());
  }

  @Test
  void theSameExportAgainAddsNothing() throws Exception {
    shop.gauged("a.db", JOB);
    shop.fresh("b.db");
    Path export = shop.exported("a.db");
    shop.imported("b.db", export);
    String before = content("b.db");

    Import.Report again = shop.imported("b.db", export);

    assertEquals(0, again.added());
    assertEquals(before, content("b.db"));
  }

  @Test
  void aLongerExportAddsOnlyWhatIsNew() throws Exception {
    shop.gauged("a.db", JOB);
    shop.fresh("b.db");
    Path early = shop.exported("a.db");
    shop.imported("b.db", early);
    shop.gauged("a.db", JOB, List.of("+0.000", "+0.038", "+0.032", "+0.020", "+0.016", "+0.000"));

    Import.Report report = shop.imported("b.db", shop.exported("a.db"));

    assertEquals(2, report.sessions());
    assertEquals(shop.results("a.db", null), shop.results("b.db", null));
    assertEquals(List.of(), chainFaults("b.db"));
    assertEquals(0, shop.imported("b.db", early).added(), "an earlier export is known, too");
  }

  @Test
  void aSessionThatWentOnAfterTheFirstImportIsOne() throws Exception {
    shop.fresh("a.db");
    var bodies = Shop.oneReading(2, "Job", 0.01, "");
    shop.append("a.db", bodies.subList(0, 2));
    shop.fresh("b.db");
    shop.imported("b.db", shop.exported("a.db"));
    shop.append("a.db", bodies.subList(2, 3));
    shop.imported("b.db", shop.exported("a.db"));

    try (LedgerView view = LedgerView.open(shop.file("b.db"))) {
      List<StoredSession> sessions = StoredSession.all(view);
      assertEquals(1, sessions.size());
      assertEquals(1, sessions.get(0).readings().size());
      assertEquals(sessions.get(0).id(), sessions.get(0).readings().get(0).reading().session());
    }
    assertEquals(List.of(), chainFaults("b.db"));
  }

  @Test
  void anotherHistoryOfTheSameLedgerIsRefused() throws Exception {
    shop.gauged("a.db", JOB);
    Files.copy(shop.file("a.db"), shop.file("fork.db"));
    shop.gauged("a.db", JOB);
    shop.gauged("fork.db", OTHER);
    shop.fresh("b.db");
    shop.imported("b.db", shop.exported("a.db"));

    assertRefused("b.db", shop.exported("fork.db"), "tells another history");
  }

  @Test
  void aLedgersOwnExportAddsNothingAndALongerOneIsRefused() throws Exception {
    shop.gauged("a.db", JOB);
    Files.copy(shop.file("a.db"), shop.file("early.db"));
    assertEquals(0, shop.imported("a.db", shop.exported("a.db")).added());
    shop.gauged("a.db", JOB);

    assertEquals(0, shop.imported("a.db", shop.exported("early.db")).added());
    assertRefused("early.db", shop.exported("a.db"), "of this very ledger");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "boreledger-export/1|boreledger-export/9|expected \"boreledger-export/1\"",
        "Small engine|Small enginf|does not follow",
        "\"seq\":3|\"seq\":4|does not follow",
        "\"entries\":|\"entries\":1|does not end with",
        "\"chain\"|\"links\"|expected the key chain",
        "]}|]|no JSON here",
        "]}|]} {}|expected the end of the file"
      })
  void aDamagedExportIsRefusedAndLeavesTheLedgerAlone(String from, String to, String why)
      throws Exception {
    shop.gauged("a.db", JOB);
    shop.fresh("b.db");
    Path export = shop.exported("a.db");
    String text = Files.readString(export);
    int at = text.lastIndexOf(from);
    Files.writeString(export, text.substring(0, at) + to + text.substring(at + from.length()));

    assertRefused("b.db", export, why);
  }

  @Test
  void whatTheOtherLedgerImportedItselfIsKeptAndNotReadTwice() throws Exception {
    shop.gauged("a.db", JOB);
    shop.gauged("b.db", OTHER);
    shop.imported("b.db", shop.exported("a.db"));

    Import.Report back = shop.imported("a.db", shop.exported("b.db"));

    assertTrue(back.fromOthers() > 0);
    assertEquals(shop.results("b.db", "Small engine"), shop.results("a.db", "Small engine"));
    assertEquals(shop.results("b.db", "Other engine"), shop.results("a.db", "Other engine"));
    try (LedgerView view = LedgerView.open(shop.file("a.db"))) {
      assertEquals(4, view.sessions().size());
    }
    assertEquals(List.of(), chainFaults("a.db"));
  }

  @Test
  void anEarlierSessionOfTheSameJobDoesNotCountBecauseItCameLater() throws Exception {
    shop.gauged("a.db", JOB);
    BenchFolder bench = new BenchFolder(folder.resolve("later"));
    String later = BenchFolder.boreHeader("pressed.gauge.toml").replace("2031-05", "2031-09");
    bench.bores(List.of());
    Path capture =
        bench.capture(
            "later.capture.jsonl",
            later,
            List.of("+0.000", "+0.048", "+0.022", "+0.010", "+0.006", "+0.000"));
    Replay.prepare(bench.job(), List.of(capture), null).into(shop.file("b.db"), event -> {});

    shop.imported("b.db", shop.exported("a.db"));

    try (LedgerView view = LedgerView.open(shop.file("b.db"))) {
      List<String> months =
          view.sessions().stream()
              .map(each -> ((SessionOpened) each.body()).wall().toString().substring(0, 7))
              .toList();
      assertEquals(List.of("2031-05", "2031-05", "2031-09"), months);
    }
    // The setting ring's 96.002 and 0.048.
    assertEquals(
        96.050,
        shop.results("b.db", null).at("/cylinders/0/bore/positions/0/diameter_mm").asDouble(),
        1e-9);
  }

  @Test
  void aChangedImportedBodyIsFoundByTheForeignChainAlone() throws Exception {
    shop.gauged("a.db", JOB);
    shop.fresh("b.db");
    shop.imported("b.db", shop.exported("a.db"));
    assertEquals(List.of(), chainFaults("b.db"));

    ImportedChains chains = new ImportedChains();
    List<String> faults = new ArrayList<>();
    try (ChainReader reader = ChainReader.open(shop.file("b.db"))) {
      reader.follow(
          row -> {
            var body = row.read();
            if (body instanceof ImportedEntry from && from.number() == 3) {
              body =
                  new ImportedEntry(
                      from.imported(), from.session(), 3, from.hash(), from.body() + " ");
            }
            chains.accept(row.seq(), body).ifPresent(faults::add);
          });
    }
    assertEquals(1, faults.size(), "a break is told once, where it is");
    assertTrue(
        faults
            .get(0)
            .matches(
                "the imported entry 3 of ledger [0-9a-f]{32} has a hash that does not follow from"
                    + " its body and the entry before: computed [0-9a-f]{64}, stored"
                    + " [0-9a-f]{64}"),
        faults.get(0));
  }

  private void assertRefused(String ledger, Path export, String why) throws Exception {
    String before = content(ledger);
    FileProblem refused = assertThrows(FileProblem.class, () -> shop.imported(ledger, export));
    assertTrue(refused.getMessage().contains(why), refused::getMessage);
    assertTrue(refused.getMessage().startsWith(export.toString()), refused::getMessage);
    assertEquals(1, refused.getMessage().lines().count());
    assertEquals(before, content(ledger), "as it was");
  }

  /** Every row as text. */
  private String content(String ledger) throws Exception {
    StringBuilder rows = new StringBuilder();
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + shop.file(ledger));
        Statement statement = connection.createStatement();
        var row = statement.executeQuery("SELECT seq, body, hex(hash) FROM entry ORDER BY seq")) {
      while (row.next()) {
        rows.append(row.getString(1)).append(row.getString(2)).append(row.getString(3));
      }
    }
    assertNotEquals(0, rows.length());
    return rows.toString();
  }

  private List<String> chainFaults(String ledger) throws LedgerFault {
    ImportedChains chains = new ImportedChains();
    List<String> faults = new ArrayList<>();
    try (ChainReader reader = ChainReader.open(shop.file(ledger))) {
      reader.follow(row -> chains.accept(row.seq(), row.read()).ifPresent(faults::add));
    }
    chains.ended().ifPresent(faults::add);
    return faults;
  }
}
