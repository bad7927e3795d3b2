package boreledger.station.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.app.UsageProblem;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerView;
import boreledger.station.session.Correction;
import boreledger.station.session.SmallJob;
import boreledger.station.session.StoredSession;
import boreledger.station.session.StoredSession.StoredReading;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CsvExportTest {
  @TempDir Path folder;
  private Shop shop;

  @BeforeEach
  void openTheShop() {
    shop = new Shop(folder);
  }

  @Test
  void everyLineEndsWithCrLfAsSection2Rule1OfRfc4180Asks() throws Exception {
    shop.gauged("a.db", SmallJob.standard());

    String csv = shop.csv("a.db");

    assertTrue(csv.endsWith("\r\n"));
    assertEquals(csv.lines().count(), csv.split("\r\n").length);
    assertFalse(csv.replace("\r\n", "").contains("\n"));
  }

  @Test
  void everyLineHasAsManyCellsAsTheHeaderAsSection2Rule4OfRfc4180Asks() throws Exception {
    shop.gauged("a.db", SmallJob.standard());

    List<CSVRecord> lines = CSVParser.parse(shop.csv("a.db"), CSVFormat.RFC4180).getRecords();

    assertEquals(1 + 6 + 2, lines.size(), "a header, six bore readings, two gaps");
    lines.forEach(line -> assertEquals(CsvRow.COLUMNS.size(), line.size()));
  }

  @Test
  void quotesCommasAndBreaksAreQuotedAsSection2Rules6And7OfRfc4180Ask() throws Exception {
    shop.fresh("a.db");
    shop.append("a.db", Shop.oneReading(2, "\"Bench\", two\r\nlines", -0.012, "a,b"));

    String csv = shop.csv("a.db");

    assertTrue(csv.contains(",\"\"\"Bench\"\", two\r\nlines\",bore,"), csv);
    assertTrue(csv.contains(",\"a,b\","), csv);
  }

  @Test
  void numbersStayNumbersAndTextsAreNoFormulas() throws Exception {
    shop.fresh("a.db");
    shop.append("a.db", Shop.oneReading(2, "=1+1", -0.012, "-x"));

    CSVRecord line = lines(shop.csv("a.db")).get(0);

    assertEquals("-0.012", line.get("value_mm"));
    assertEquals("'=1+1", line.get("job"));
    assertEquals("'-x", line.get("cautions"));
    assertEquals("'=gauge", line.get("gauge"));
    assertEquals("0x2d312e300d0a", line.get("raw"));
  }

  @Test
  void aSmallNumberHasAllItsDigitsAndNoExponent() throws Exception {
    shop.fresh("a.db");
    shop.append("a.db", Shop.oneReading(2, "Job", 1.25e-5, ""));

    assertEquals("0.0000125", lines(shop.csv("a.db")).get(0).get("value_mm"));
  }

  @Test
  void aSecondReaderFindsEveryReadingOfTheLedger() throws Exception {
    shop.gauged("a.db", SmallJob.standard());
    List<CSVRecord> lines = lines(shop.csv("a.db"));

    int compared = 0;
    try (LedgerView view = LedgerView.open(shop.file("a.db"))) {
      for (StoredSession session : StoredSession.all(view)) {
        for (StoredReading stored : session.readings()) {
          CSVRecord line = lines.get(compared);
          assertEquals(session.id(), Long.parseLong(line.get("session")));
          assertEquals(stored.seq(), Long.parseLong(line.get("entry")));
          assertEquals(stored.reading().valueMm(), Double.parseDouble(line.get("value_mm")));
          assertEquals(view.entry(stored.seq()).orElseThrow().hash().toHex(), line.get("hash"));
          assertEquals(
              stored.reading().samples().stream().map(each -> "0x" + each.raw()).toList(),
              Arrays.asList(line.get("raw").split(" ")));
          compared++;
        }
      }
    }
    assertEquals(8, compared);
  }

  @Test
  void aReadingThatWasTakenBackIsStruckWithItsReason() throws Exception {
    shop.gauged("a.db", SmallJob.standard());
    long entry = Long.parseLong(lines(shop.csv("a.db")).get(1).get("entry"));
    try (Ledger ledger = Ledger.openOrCreate(shop.file("a.db"))) {
      new Correction(ledger, "chip under the anvil", "A. Turner", Shop.NOON).takeBack(entry);
    }

    List<CSVRecord> lines = lines(shop.csv("a.db"));

    assertEquals(8, lines.size());
    assertEquals(Long.toString(entry), lines.get(1).get("entry"));
    assertEquals("struck", lines.get(1).get("state"));
    assertEquals("chip under the anvil, A. Turner", lines.get(1).get("why"));
    assertEquals("in force", lines.get(2).get("state"));
  }

  @Test
  void aJobOrASessionCanBeChosen() throws Exception {
    shop.gauged("a.db", SmallJob.standard());
    shop.gauged("a.db", SmallJob.standard().with("Small engine", "Other engine"));
    long session = Long.parseLong(lines(shop.csv("a.db")).get(0).get("session"));

    assertEquals(8, lines(shop.csv("a.db", new Choice("Other engine", null))).size());
    assertEquals(6, lines(shop.csv("a.db", new Choice(null, session))).size());
    UsageProblem none =
        assertThrows(UsageProblem.class, () -> shop.csv("a.db", new Choice("No engine", null)));
    assertEquals(
        "no session of the job \"No engine\" in this ledger; results names its jobs",
        none.getMessage());
  }

  private static List<CSVRecord> lines(String csv) throws Exception {
    CSVFormat strict = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).build();
    return CSVParser.parse(csv, strict).getRecords();
  }
}
