package boreledger.station.keeping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import boreledger.station.app.LedgerBook;
import boreledger.station.app.SessionChange;
import boreledger.station.audit.AuditedLedger;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerView;
import boreledger.station.seal.KeyFile;
import boreledger.station.seal.Seal;
import boreledger.station.session.SmallJob;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A Python script that knows only the format's page follows imported chains. */
class StrangersScriptTest {
  private static final SmallJob JOB = SmallJob.standard();
  private static final SmallJob OTHER = JOB.with("Small engine", "Other engine");
  private static final Path SCRIPT =
      Path.of(System.getProperty("basedir", "."), "src/test/python/verify_ledger.py");

  /** After b's own 19 entries and the import's opening. */
  private static final long FIRST_IMPORTED = 21;

  @TempDir Path folder;
  private Shop shop;
  private Path seal;

  @BeforeEach
  void importASealedLedger() throws Exception {
    assumeTrue(hasPython(), "python3 with its sqlite3 module is not installed");
    shop = new Shop(folder);
    shop.gauged("a.db", JOB);
    seal = sealed("a.db");
    shop.gauged("b.db", OTHER);
    shop.imported("b.db", shop.exported("a.db"));
  }

  @Test
  void whatWasImportedFollowsAndItsSealsHold() throws Exception {
    assertEquals("40 " + head("b.db"), python(0, "b.db", seal));
  }

  @Test
  void whatWasImportedTwiceOverFollows() throws Exception {
    shop.imported("a.db", shop.exported("b.db"));
    shop.fresh("c.db");
    shop.imported("c.db", shop.exported("a.db"));

    python(0, "a.db");
    python(0, "c.db");
  }

  @Test
  void aLaterImportGoesOnWhereTheOneBeforeEnded() throws Exception {
    shop.gauged("a.db", JOB);
    shop.imported("b.db", shop.exported("a.db"));

    python(0, "b.db", seal);
  }

  @Test
  void aChangedImportedBodyUnderANewChainIsFound() {
    long bore = FIRST_IMPORTED + AuditedLedger.BORE - 1;
    AuditedLedger.at(shop.file("b.db")).exchanged(bore, "press", "pross").rechained();

    assertEquals(
        "entry " + bore + ": imported entry 9: its hash does not follow",
        python(1, "b.db", seal).lines().skip(1).findFirst().orElse(""));
  }

  @Test
  void anAmendmentToAKeptJobFollowsAndToAnotherOneIsFound() throws Exception {
    Path warmer =
        Files.writeString(folder.resolve("warm.toml"), JOB.with("11.0e-6", "12e-6").text());
    new LedgerBook(shop.file("a.db"))
        .amend(
            7, new SessionChange(null, 21.0, null, warmer), "other iron", "A. Turner", Shop.NOON);
    python(0, "a.db");

    AuditedLedger a = AuditedLedger.at(shop.file("a.db"));
    a.exchanged(22, "\"job\":\"", "\"job\":\"ff").rechained();
    assertTrue(python(1, "a.db").contains("entry 22: goes by the document ff"), a.body(22));
  }

  @Test
  void anImportWhoseEndIsMissingIsFound() {
    AuditedLedger.at(shop.file("b.db")).tampered("DELETE FROM entry WHERE seq > 37");

    assertTrue(python(1, "b.db").contains("3 imported entries are missing"));
    String sealed = python(1, "b.db", seal);
    assertTrue(sealed.contains("entry 19 is not what was sealed"), sealed);
  }

  @Test
  void aReadingPutIntoAnotherSessionIsFound() {
    long bore = FIRST_IMPORTED + AuditedLedger.BORE - 1;
    AuditedLedger b = AuditedLedger.at(shop.file("b.db"));
    b.exchanged(bore, "\"session\":27,\"number\"", "\"session\":7,\"number\"").rechained();

    assertEquals(
        "entry " + bore + ": names another session than its body",
        python(1, "b.db").lines().skip(1).findFirst().orElse(""));
  }

  @Test
  void passesWithTheFileFollowAndSoDoTheirWithdrawals() throws Exception {
    long pass = shop.filed("a.db", "0.42", "0.45");
    shop.withdrawn("a.db", pass);
    shop.imported("b.db", shop.exported("a.db"));

    python(0, "a.db");
    python(0, "b.db");
  }

  @Test
  void aPassWithAGapThatIsNoPlainDecimalIsFoundAndSoIsAWithdrawalOfNothing() throws Exception {
    long pass = shop.filed("a.db", "0.42", "0.45");
    shop.withdrawn("a.db", pass);
    AuditedLedger a = AuditedLedger.at(shop.file("a.db"));

    a.exchanged(pass, "\"0.42\"", "\".42\"").rechained();
    assertTrue(python(1, "a.db").contains("entry " + pass + ": is a pass with a gap of .42"));

    a.exchanged(pass + 1, "\"entry\":" + pass, "\"entry\":9").rechained();
    assertTrue(python(1, "a.db").contains("withdraws no pass of its session that counts"));
  }

  private String head(String name) throws Exception {
    try (LedgerView view = LedgerView.open(shop.file(name))) {
      return view.headHash().toHex();
    }
  }

  private Path sealed(String name) throws Exception {
    try (Ledger open = Ledger.open(shop.file(name));
        LedgerView view = open.view()) {
      Seal made =
          new KeyFile(folder.resolve("key.pem"))
              .make(null)
              .seal(view.id(), open.headSeq(), open.headHash(), Shop.NOON.instant(), "A. Turner");
      open.append(made.kept());
      return Files.writeString(folder.resolve("a.seal"), made.text());
    }
  }

  private String python(int status, String ledger, Path... seals) {
    try {
      List<String> command =
          new ArrayList<>(
              List.of("python3", "-B", SCRIPT.toString(), shop.file(ledger).toString()));
      for (Path each : seals) {
        command.add(each.toString());
      }
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      String told =
          new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
              .replace("\r\n", "\n")
              .strip();
      assertEquals(status, process.waitFor(), told);
      return told;
    } catch (IOException | InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  private static boolean hasPython() {
    try {
      return new ProcessBuilder("python3", "-c", "import sqlite3").start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }
}
