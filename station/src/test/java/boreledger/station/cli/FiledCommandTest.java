package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.audit.AuditedLedger;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Passes with the file by command, and what the other commands make of them. */
class FiledCommandTest {
  /** The session of the small engine's gaps, and its entries. */
  private static final long GAPS = 16;

  @TempDir Path folder;
  private AuditedLedger ledger;

  @BeforeEach
  void gauge() {
    ledger = AuditedLedger.gauged(folder);
  }

  @Test
  void aPassIsKeptAsItWasReadWithTheSessionOfItsRingsGaps() {
    JsonNode kept = filed("5", "0.42", "0.450", "--json").ended(0).json();

    assertEquals(AuditedLedger.LAST + 1, kept.path("entry").asLong());
    String body = ledger.body(AuditedLedger.LAST + 1);
    assertTrue(
        body.startsWith(
            "{\"kind\":\"filed\",\"session\":"
                + GAPS
                + ",\"cylinder\":1,\"ring\":\"top\",\"turns\":5,\"before_mm\":\"0.42\","
                + "\"after_mm\":\"0.450\",\"wall\":\""),
        body);
    assertTrue(body.endsWith("\",\"who\":\"A. Turner\"}"), body);
  }

  @Test
  void theResultsHaveThePassesInOrderAndACautionThatTheGapsAreFromBefore() {
    filed("5", "0.42", "0.45").ended(0);
    filed("3", "0.45", "0.466").ended(0);

    JsonNode ring = ring();

    assertEquals(2, ring.path("filed").size());
    assertEquals(0.45, ring.at("/filed/0/after_mm").asDouble());
    assertEquals(3, ring.at("/filed/1/turns").asInt());
    assertEquals("A. Turner", ring.at("/filed/1/who").asText());
    assertTrue(ring.at("/filed/1/since_gauged").asBoolean());
    assertEquals(
        "top ring: filed since it was gauged, passes: 2, last read 0.4660 mm by A. Turner. The gaps"
            + " here and what is to be filed off are from before. Gauge it again.",
        ring.at("/cautions/0").asText());
    String words = Ran.command("results", "--ledger", ledger.file()).out();
    assertTrue(words.contains("filed 3 turns: 0.4500 to 0.4660 mm by A. Turner, entry 21"), words);
  }

  @Test
  void aWithdrawnPassCountsNoMoreAndStaysInTheLedger() {
    filed("50", "0.42", "0.45").ended(0);

    Ran withdrawn = withdraw(20, "it was 5 turns").ended(0);

    assertTrue(withdrawn.out().startsWith("Withdrawn, as entry 21: top ring"), withdrawn::toString);
    assertEquals(0, ring().path("filed").size());
    assertTrue(ledger.body(20).contains("\"turns\":50"));
    Ran.command("audit", "--ledger", ledger.file()).ended(0);
    withdraw(20, "again").refused(2);
    withdraw(17, "a reading").refused(2);
    assertEquals(null, ledger.body(22));
  }

  @ParameterizedTest
  @CsvSource({
    "2, top, 5, 0.42, 0.45",
    "0, top, 5, 0.42, 0.45",
    "1, oil, 5, 0.42, 0.45",
    "1, top, 0, 0.42, 0.45",
    "1, top, 5, -0.42, 0.45",
    "1, top, 5, 0.42, 45",
    "1, top, 5, 0.42, 1e-99",
    "1, top, 5.5, 0.42, 0.45",
  })
  void aPassThatCannotHaveBeenIsRefusedInOneLineAndNothingIsWritten(
      String cylinder, String ring, String turns, String before, String after) {
    Ran ran =
        Ran.command(
            "filed",
            "--ledger",
            ledger.file(),
            "--cylinder",
            cylinder,
            "--ring",
            ring,
            "--turns",
            turns,
            "--before",
            before,
            "--after",
            after,
            "--by",
            "A. Turner");

    ran.ended(2);
    assertFalse(ran.err().isBlank());
    assertEquals(null, ledger.body(AuditedLedger.LAST + 1));
  }

  @Test
  void onlyALedgerThatIsThereIsWritten() {
    Path nowhere = folder.resolve("nowhere.db");

    Ran.command(
            "filed",
            "--ledger",
            nowhere,
            "--cylinder",
            1,
            "--ring",
            "top",
            "--turns",
            5,
            "--before",
            0.42,
            "--after",
            0.45,
            "--by",
            "A. Turner")
        .refused(4);

    assertFalse(Files.exists(nowhere));
  }

  @Test
  void halfAPassOrAWithdrawalWithAPassIsRefused() {
    Ran.command("filed", "--ledger", ledger.file(), "--cylinder", 1, "--by", "A").refused(2);
    Ran.command("filed", "--ledger", ledger.file(), "--withdraw", 20, "--by", "A").refused(2);
    filed("5", "0.42", "0.45", "--why", "so").refused(2);
    assertEquals(null, ledger.body(AuditedLedger.LAST + 1));
  }

  @Test
  void anImportBringsThePassesWithTheirChain() {
    filed("5", "0.42", "0.45").ended(0);
    filed("50", "0.45", "0.46").ended(0);
    withdraw(21, "not filed").ended(0);
    Path json = folder.resolve("a.json");
    Ran.command("export", "--ledger", ledger.file(), "--format", "json", "--out", json).ended(0);
    AuditedLedger theirs = AuditedLedger.gauged(make(folder.resolve("other")));
    Ran.command("import", "--ledger", theirs.file(), "--file", json).ended(0);

    Ran.command("audit", "--ledger", theirs.file()).ended(0);
    JsonNode filed =
        Ran.command("results", "--ledger", theirs.file(), "--json")
            .json()
            .at("/cylinders/0/rings/0/filed");
    assertEquals(1, filed.size());
    assertEquals(5, filed.at("/0/turns").asInt());
    withdrawFrom(theirs, filed.at("/0/entry").asLong()).refused(2);
  }

  @Test
  void aPassInAnotherWordThanItWasWrittenIsFoundByTheAudit() {
    filed("5", "0.42", "0.45").ended(0);
    ledger.exchanged(20, "\"before_mm\":\"0.42\"", "\"before_mm\":\"4.2e-1\"").rechained();

    JsonNode audit = Ran.command("audit", "--ledger", ledger.file(), "--json").ended(1).json();

    assertEquals(
        "the gap before is \"4.2e-1\", no plain decimal number",
        audit.at("/findings/0/what").asText());
    assertEquals(0, ring().path("filed").size());
  }

  @Test
  void theBuildSheetHasTheRecordOfPassesAndWhoFiled() throws Exception {
    filed("5", "0.42", "0.45").ended(0);
    Path sheet = folder.resolve("s.pdf");

    Ran.command("report", "--ledger", ledger.file(), "--out", sheet);

    try (var pdf = org.apache.pdfbox.Loader.loadPDF(sheet.toFile())) {
      String words =
          new org.apache.pdfbox.text.PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
      assertTrue(words.contains("Turns filed Gap before Gap after Opened by By"), words);
      assertTrue(words.contains("5 0.420 0.450 +0.030 A. Turner"), words);
      assertTrue(words.contains("top ring: filed since it was gauged, passes: 1"), words);
    }
  }

  private Ran filed(String turns, String before, String after, Object... more) {
    List<Object> words =
        new ArrayList<>(
            List.of(
                "filed",
                "--ledger",
                ledger.file(),
                "--cylinder",
                1,
                "--ring",
                "top",
                "--turns",
                turns,
                "--before",
                before,
                "--after",
                after,
                "--by",
                "A. Turner"));
    words.addAll(List.of(more));
    return Ran.command(words.toArray());
  }

  private Ran withdraw(long entry, String why) {
    return Ran.command(
        "filed", "--ledger", ledger.file(), "--withdraw", entry, "--why", why, "--by", "B. Filer");
  }

  private static Ran withdrawFrom(AuditedLedger ledger, long entry) {
    return Ran.command(
        "filed", "--ledger", ledger.file(), "--withdraw", entry, "--why", "x", "--by", "B");
  }

  private JsonNode ring() {
    return Ran.command("results", "--ledger", ledger.file(), "--json")
        .json()
        .at("/cylinders/0/rings/0");
  }

  private static Path make(Path made) {
    try {
      return Files.createDirectories(made);
    } catch (java.io.IOException e) {
      throw new AssertionError(e);
    }
  }
}
