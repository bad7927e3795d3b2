package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.app.BenchFolder;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeepingCommandsTest {
  @TempDir Path folder;
  private BenchFolder bench;
  private Path out;

  @BeforeEach
  void gauge() {
    bench = new BenchFolder(folder);
    out = folder.resolve("out");
    Path capture = bench.bores(BenchFolder.BORES);
    Ran.command("replay", "--job", bench.job(), "--capture", capture, "--ledger", bench.ledger())
        .ended(0);
  }

  @Test
  void anExportToStandardOutputHasNothingElseThere() {
    Ran csv = Ran.command("export", "--ledger", bench.ledger(), "--out", "-", "--json").ended(0);

    assertTrue(csv.out().startsWith("session,job,measure,"), csv::toString);
    assertEquals(7, csv.out().split("\r\n").length);
    assertTrue(csv.err().startsWith("Exported 6 readings, head "), csv::toString);
  }

  @Test
  void aJsonExportToStandardOutputIsOneDocument() {
    JsonNode export =
        Ran.command("export", "--ledger", bench.ledger(), "--out", "-", "--format", "json")
            .ended(0)
            .json();

    assertEquals("boreledger-export/1", export.path("format").asText());
    assertEquals(export.path("entries").asInt(), export.path("chain").size());
  }

  @Test
  void anExportIntoAFileAnswersWithWhatItWrote() throws Exception {
    JsonNode answer =
        Ran.command("export", "--ledger", bench.ledger(), "--out", out, "--json").ended(0).json();

    assertEquals(6, answer.path("readings").asInt());
    assertEquals(out.toString(), answer.path("out").asText());
    assertEquals(7, Files.readString(out).split("\r\n").length);
  }

  @Test
  void anExportNeverOverwritesUnasked() throws Exception {
    Files.writeString(out, "mine");

    Ran.command("export", "--ledger", bench.ledger(), "--out", out).refused(2);
    assertEquals("mine", Files.readString(out));
    Ran.command("export", "--ledger", bench.ledger(), "--out", out, "--replace").ended(0);
    Ran.command("export", "--ledger", bench.ledger(), "--out", bench.ledger(), "--replace")
        .refused(2);
  }

  @Test
  void whatCannotBeExportedIsToldInOneLine() {
    Path missing = folder.resolve("missing.db");
    Ran.command("export", "--ledger", missing, "--out", out).refused(4);
    Ran.command("export", "--ledger", missing, "--out", "-").refused(4);
    Ran.command("export", "--ledger", bench.ledger(), "--out", folder.resolve("no/x")).refused(2);
    Ran.command("export", "--ledger", bench.ledger(), "--out", folder).refused(2);
    Ran.command("export", "--ledger", bench.ledger(), "--out", out, "--job", "No").refused(2);
    Ran.command("export", "--ledger", bench.ledger(), "--out", out, "--session", "1").refused(2);
    Ran.command(
            "export", "--ledger", bench.ledger(), "--out", out, "--format", "json", "--session", 6)
        .refused(2);
    Ran.command("export", "--ledger", bench.ledger(), "--out", out, "--format", "xml").refused(2);
    assertFalse(Files.exists(out));
  }

  @Test
  void standardOutputThatNobodyTakesEndsTheExport() {
    Writer closed =
        new Writer() {
          @Override
          public void write(char[] text, int from, int length) throws IOException {
            throw new IOException("closed");
          }

          @Override
          public void flush() {}

          @Override
          public void close() {}
        };
    Ran ran =
        Ran.command(
                new PrintWriter(closed),
                new StringWriter(),
                "export",
                "--ledger",
                bench.ledger(),
                "--out",
                "-")
            .refused(2);
    assertEquals("standard output: nobody takes the output any more", ran.err().strip());
  }

  @Test
  void anImportWantsALedgerOrTheWordToMakeOne() throws Exception {
    Path export = exported();
    Path shop = folder.resolve("shop.db");

    Ran.command("import", "--ledger", shop, "--file", export).refused(4);
    assertFalse(Files.exists(shop));
    JsonNode report =
        Ran.command("import", "--ledger", shop, "--file", export, "--create", "--json")
            .ended(0)
            .json();

    assertEquals(1, report.path("sessions").asInt());
    assertEquals(6, report.path("readings").asInt());
    Ran again = Ran.command("import", "--ledger", shop, "--file", export).ended(0);
    assertTrue(again.out().startsWith("Nothing new: all "), again::toString);
    Ran.command("results", "--ledger", shop).ended(0);
    Ran.command("audit", "--ledger", shop).ended(0);
  }

  @Test
  void anImportOfSomethingElseMakesNoLedger() throws Exception {
    Path shop = folder.resolve("shop.db");
    Files.writeString(out, "{\"a\":1}");

    Ran.command("import", "--ledger", shop, "--file", out, "--create").refused(2);
    Ran.command("import", "--ledger", shop, "--file", bench.job(), "--create").refused(2);
    Ran.command("import", "--ledger", shop, "--file", folder.resolve("no"), "--create").refused(2);
    Ran.command("import", "--ledger", shop, "--file", folder, "--create").refused(2);

    assertFalse(Files.exists(shop));
  }

  @Test
  void aBackupIsRestoredWithItsHead() {
    JsonNode proof =
        Ran.command("backup", "--ledger", bench.ledger(), "--out", out, "--json").ended(0).json();
    Ran.command("backup", "--ledger", bench.ledger(), "--out", out).refused(2);
    Path again = folder.resolve("again.db");

    Ran restored = Ran.command("restore", "--from", out, "--ledger", again).ended(0);

    assertTrue(restored.out().contains(proof.path("ledger_head").asText()), restored::toString);
    assertTrue(
        restored.out().startsWith("Restored " + proof.path("entries").asInt() + " entries into "));
    Ran.command("restore", "--from", out, "--ledger", again).refused(2);
    Ran.command("restore", "--from", out, "--ledger", again, "--replace").ended(0);
    Ran.command("audit", "--ledger", again).ended(0);
  }

  @Test
  void whatIsNoBackupIsNotRestored() {
    Path again = folder.resolve("again.db");
    Ran.command("restore", "--from", bench.job(), "--ledger", again).refused(4);
    Ran.command("restore", "--from", folder.resolve("no"), "--ledger", again).refused(4);
    assertFalse(Files.exists(again));
  }

  private Path exported() {
    Ran.command("export", "--ledger", bench.ledger(), "--out", out, "--format", "json").ended(0);
    return out;
  }
}
