package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program's own folder, as a person has it: exports, imports, backups, restores. */
class KeepingIT {
  private static final String JOB = "Pumphouse three";

  /** Reads a CSV file as RFC 4180 is commonly read, and drops the guarding apostrophes. */
  private static final String READ_CSV =
      """
      import csv, json, sys
      with open(sys.argv[1], newline="", encoding="utf-8") as file:
          rows = [{key: text[1:] if text.startswith("'") else text for key, text in row.items()}
                  for row in csv.DictReader(file, strict=True)]
      print(json.dumps(rows))
      """;

  private final Launcher program = Launcher.process();

  @TempDir Path folder;

  @Test
  void bothExportsOfTheDemoTellTheSameReadings() throws Exception {
    assumeTrue(hasPython(), "python3 is not installed");
    demo("demo.ledger");
    export("demo.ledger", "demo.csv");
    export("demo.ledger", "demo.json");
    JsonNode export = Json.file(folder.resolve("demo.json"));
    assertEquals(ChainCheck.entriesOf(folder.resolve("demo.ledger")), ChainCheck.entriesOf(export));

    JsonNode rows = csv("demo.csv");

    for (JsonNode row : rows) {
      JsonNode entry = export.path("chain").get(row.path("entry").asInt() - 1);
      JsonNode body = body(entry);
      assertEquals("reading", body.path("kind").asText());
      assertEquals(entry.path("hash"), row.path("hash"));
      assertEquals(body.path("session").asText(), row.path("session").asText());
      assertEquals(body.path("rule"), row.path("rule"));
      assertEquals(body.path("value_mm").asDouble(), row.path("value_mm").asDouble());
      assertEquals(JOB, row.path("job").asText());
      assertEquals(22, row.size(), row::toString);
    }
    assertEquals(readings(export), rows.size());
    assertTrue(rows.size() > 18, () -> rows.size() + " rows");
  }

  @Test
  void importedResultsAreTheOriginalsInAFreshAndInAFilledLedger() {
    demo("demo.ledger");
    export("demo.ledger", "demo.json");
    Bundle bundle =
        new Bundle(folder)
            .withSamples(
                "pumphouse-three.job.toml",
                "signed-decimal.gauge.toml",
                "bore-press.capture.jsonl");
    bundle.edit("pumphouse-three.job.toml", JOB, "Pumphouse four");
    Outcome filled =
        program.run(bundle.replay("pumphouse-three.job.toml", List.of("bore-press.capture.jsonl")));
    assertTrue(filled.exit() < 2, filled::toString);

    program.run("import", "--file", at("demo.json"), "--ledger", at("new"), "--create").ended(0);
    program.run("import", "--file", at("demo.json"), "--ledger", bundle.ledger()).ended(0);

    JsonNode original = results("demo.ledger");
    assertEquals(original, results("new"));
    assertEquals(original, results("bench.ledger"));
    for (String ledger : List.of("new", "bench.ledger")) {
      ChainCheck.entriesOf(folder.resolve(ledger));
      JsonNode audit = program.run("audit", "--json", "--ledger", at(ledger)).ended(0).json();
      assertTrue(audit.path("recomputed").asInt() > 18, audit::toString);
      assertEquals(0, audit.path("differing").asInt());
    }
  }

  @Test
  void aBackupTakenWhileCaptureRunsIsWholeAndCaptureGoesOn() {
    KillPlan plan = new KillPlan(10);
    LiveBench bench = new LiveBench(folder, plan.engine());
    Path backup = folder.resolve("backup.db");
    long entries;
    try (Cable cable = Cable.lay(folder, "gauge");
        Running running =
            LiveBench.start(folder, bench.bore(cable.port(), "bench.ledger"), cable)) {
      LiveBench.press(running, cable, KillPlan.ZERO);
      cable.send(plan.burst(3));
      assertTrue(running.awaitTaken(4, LiveBench.PATIENCE), running::toString);
      JsonNode proof =
          program
              .run(
                  "backup", "--json", "--ledger", bench.bundle().ledger(), "--out", at("backup.db"))
              .ended(0)
              .json();
      entries = ChainCheck.entriesOf(backup);
      assertEquals(entries, proof.path("entries").asLong());
      running.entries().forEach(entry -> assertTrue(entry <= entries, entry + " is missing"));

      cable.send(plan.burst(2));
      assertTrue(running.awaitTaken(6, LiveBench.PATIENCE), running::toString);
      running.interrupt();
      running.end(LiveBench.PATIENCE);
    }
    assertTrue(ChainCheck.entriesOf(folder.resolve("bench.ledger")) >= entries + 2);

    program.run("restore", "--from", at("backup.db"), "--ledger", at("restored")).ended(0);
    assertEquals(entries, ChainCheck.entriesOf(folder.resolve("restored")));
    program.run("audit", "--ledger", at("restored")).ended(0);
  }

  @Test
  void aDamagedBackupIsNotRestored() throws Exception {
    demo("demo.ledger");
    program.run("backup", "--ledger", at("demo.ledger"), "--out", at("backup.db")).ended(0);
    Path backup = folder.resolve("backup.db");
    // One letter of a kept document, and of the copies that SQLite's pages still carry of it;
    // ISO 8859-1 keeps every byte as it is.
    String bytes = Files.readString(backup, StandardCharsets.ISO_8859_1);
    assertTrue(bytes.contains("boreledger-job/1"));
    Files.writeString(
        backup, bytes.replace("boreledger-job/1", "Boreledger-job/1"), StandardCharsets.ISO_8859_1);

    Set<String> before = new Bundle(folder).names();
    String why =
        program.run("restore", "--from", at("backup.db"), "--ledger", at("restored")).refused(4);

    assertTrue(why.startsWith(at("backup.db")), why);
    assertFalse(Files.exists(folder.resolve("restored")));
    assertEquals(before, new Bundle(folder).names(), "no leftovers");
  }

  private void demo(String ledger) {
    program.run("demo", "--headless", "--ledger", at(ledger)).noTrace();
  }

  private void export(String ledger, String out) {
    String format = out.substring(out.indexOf('.') + 1);
    program.run("export", "--ledger", at(ledger), "--out", at(out), "--format", format).ended(0);
  }

  /** A job's results without the head and the session numbers, which are a ledger's own. */
  private JsonNode results(String ledger) {
    Outcome run = program.run("results", "--json", "--job", JOB, "--ledger", at(ledger));
    assertTrue(run.exit() < 2, run::toString);
    ObjectNode results = (ObjectNode) run.json();
    results.remove("ledger_head");
    results.path("gauges").forEach(use -> ((ObjectNode) use).remove("session"));
    return results;
  }

  private String at(String name) {
    return folder.resolve(name).toString();
  }

  private static long readings(JsonNode export) throws IOException {
    long readings = 0;
    for (JsonNode entry : export.path("chain")) {
      readings += body(entry).path("kind").asText().equals("reading") ? 1 : 0;
    }
    return readings;
  }

  private static JsonNode body(JsonNode entry) throws IOException {
    return new ObjectMapper().readTree(entry.path("body").asText());
  }

  private JsonNode csv(String name) throws Exception {
    Process python = new ProcessBuilder("python3", "-c", READ_CSV, at(name)).start();
    String told = new String(python.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, python.waitFor(), told);
    return new ObjectMapper().readTree(told);
  }

  private static boolean hasPython() throws Exception {
    try {
      return new ProcessBuilder("python3", "--version").start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    }
  }
}
