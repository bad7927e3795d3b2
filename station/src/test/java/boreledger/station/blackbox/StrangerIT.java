package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A stranger checks ledgers and seals with a Python script that knows only the format's page. */
class StrangerIT {
  private static final Path SCRIPT =
      Path.of(System.getProperty("basedir", "."), "src/test/python/verify_ledger.py")
          .toAbsolutePath();

  private final Launcher program = Launcher.process();

  @TempDir Path folder;
  private Path ledger;
  private Path seal;

  @BeforeEach
  void gaugeAndSeal() {
    assumeTrue(hasPython(), "python3 with its sqlite3 module is not installed");
    ledger = folder.resolve("demo.ledger");
    seal = folder.resolve("demo.seal");
    program.run("demo", "--headless", "--ledger", ledger.toString()).noTrace();
    program
        .run(
            "seal",
            "--ledger",
            ledger.toString(),
            "--name",
            "A. Turner",
            "--key",
            folder.resolve("key.pem").toString(),
            "--out",
            seal.toString())
        .ended(0);
  }

  @Test
  void theScriptAndTheAuditAgreeOnAnUntouchedLedger() {
    JsonNode audit = audit(0);

    assertEquals(
        audit.path("entries").asInt() + " " + audit.path("head").asText() + "\n\n",
        python(0, SCRIPT.toString(), ledger.toString(), seal.toString()));
  }

  @Test
  void theScriptAndTheAuditBothSeeAChangedReading() throws Exception {
    tamper("UPDATE entry SET body = replace(body, '\"rock\"', '\"dial\"') WHERE seq = 12");

    assertEquals(12, audit(1).at("/findings/0/entry").asInt());
    String told = python(1, SCRIPT.toString(), ledger.toString(), seal.toString());
    assertTrue(told.contains("entry 12: its hash does not follow"), told);
  }

  @Test
  void theScriptAndTheAuditBothSeeATailCutOff() throws Exception {
    tamper("DELETE FROM entry WHERE seq > 40");

    assertTrue(audit(1).at("/findings/0/what").asText().endsWith("the tail was cut off"));
    String told = python(1, SCRIPT.toString(), ledger.toString(), seal.toString());
    assertTrue(told.contains("is not what was sealed"), told);
  }

  @Test
  void theScriptSeesASealWhoseNameWasChanged() throws Exception {
    Files.writeString(seal, Files.readString(seal).replace("A. Turner", "B. Turner"));

    String told = python(1, SCRIPT.toString(), ledger.toString(), seal.toString());
    assertTrue(told.contains("demo.seal: the signature is wrong"), told);
    audit(1);
  }

  private JsonNode audit(int status) {
    return program
        .run(
            "audit",
            "--json",
            "--ledger",
            ledger.toString(),
            "--seal",
            seal.toString(),
            "--key",
            folder.resolve("key.pem").toString())
        .ended(status)
        .json();
  }

  private void tamper(String change) throws Exception {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + ledger);
        Statement sql = connection.createStatement()) {
      sql.executeUpdate("DROP TRIGGER entry_no_update");
      sql.executeUpdate("DROP TRIGGER entry_no_delete");
      sql.executeUpdate(change);
      sql.executeUpdate(
          """
          CREATE TRIGGER entry_no_update BEFORE UPDATE ON entry
          BEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END
          """);
      sql.executeUpdate(
          """
          CREATE TRIGGER entry_no_delete BEFORE DELETE ON entry
          BEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END
          """);
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

  private static String python(int status, String... args) {
    try {
      List<String> command = new java.util.ArrayList<>(List.of("python3", "-B"));
      command.addAll(List.of(args));
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      String told =
          new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
              .replace("\r\n", "\n");
      assertEquals(status, process.waitFor(), told);
      return told;
    } catch (IOException | InterruptedException e) {
      throw new AssertionError(e);
    }
  }
}
