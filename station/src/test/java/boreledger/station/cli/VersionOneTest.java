package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.audit.AuditedLedger;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A ledger of format version 1 that an earlier build of the program wrote, kept as a file: what
 * people have on their benches must stay readable. It holds three sessions of the sample captures
 * {@code bore-press}, {@code bore-damaged} and {@code gap-top}.
 */
class VersionOneTest {
  private static final String FIXTURE = "/boreledger/station/ledger/version-1.ledger";
  private static final String SHA256 =
      "2c48af75cf87c5c6772ab5c80ae0073d6865e517b12e01515bcc824459072ef7";
  private static final String HEAD =
      "e7c9c26204039615df885a179eef0508cbb8bbe21220f577c132daeaff4d3735";
  private static final int ENTRIES = 67;
  // As the samples' expected answers say: 0.000001 mm for diameters, and for gaps as read.
  private static final double TOLERANCE_MM = 1e-6;

  private final Path samples =
      Path.of(System.getProperty("basedir", "."), "..", "sample-captures").toAbsolutePath();

  @TempDir Path folder;
  private Path ledger;

  @BeforeEach
  void copy() throws Exception {
    ledger = Files.write(folder.resolve("old.db"), fixture());
    assertEquals(SHA256, sha256(Files.readAllBytes(ledger)));
  }

  @Test
  void itIsIntactAndStaysAsItIs() throws Exception {
    JsonNode audit = Ran.command("audit", "--ledger", ledger, "--json").ended(0).json();

    assertTrue(audit.path("intact").asBoolean(), audit::toPrettyString);
    assertEquals(ENTRIES, audit.path("entries").asInt());
    assertEquals(49, audit.path("recomputed").asInt());
    assertEquals(0, audit.path("differing").asInt());
    assertEquals(HEAD, audit.path("head").asText());
    assertEquals(SHA256, sha256(Files.readAllBytes(ledger)));
  }

  @Test
  void itsResultsAreThoseOfTheModelThatMadeTheCaptures() throws Exception {
    JsonNode results = Ran.command("results", "--ledger", ledger, "--json").ended(1).json();

    assertEquals(HEAD, results.path("ledger_head").asText());
    int compared = 0;
    for (JsonNode cylinder : expected("bore-damaged")) {
      JsonNode found = cylinder(results, cylinder).at("/bore/positions");
      for (JsonNode position : cylinder.at("/bore/positions")) {
        JsonNode same = like(found, position, "depth_mm", "axis");
        assertEquals(mm(position, "diameter_mm"), mm(same, "diameter_mm"), TOLERANCE_MM);
        compared++;
      }
    }
    for (JsonNode cylinder : expected("gap-top")) {
      JsonNode found = cylinder(results, cylinder).at("/rings/0/gaps");
      for (JsonNode gap : cylinder.at("/rings/0/gaps")) {
        JsonNode same = like(found, gap, "depth_mm");
        assertEquals(mm(gap, "measured_mm"), mm(same, "measured_mm"), TOLERANCE_MM);
        compared++;
      }
    }
    assertEquals(18 + 9, compared);
    assertEquals(SHA256, sha256(Files.readAllBytes(ledger)));
  }

  @Test
  void itIsGoneOnWithBehindTheOldEntries() throws Exception {
    Ran.command(
            "replay",
            "--ledger",
            ledger,
            "--job",
            samples.resolve("pumphouse-three.job.toml"),
            "--capture",
            samples.resolve("gap-second.capture.jsonl"))
        .ended(0);

    JsonNode audit = Ran.command("audit", "--ledger", ledger, "--json").ended(0).json();
    assertTrue(audit.path("entries").asInt() > ENTRIES + 9, audit::toPrettyString);
    assertEquals(HEAD, AuditedLedger.at(ledger).hash(ENTRIES));
  }

  private JsonNode expected(String capture) throws IOException {
    return new ObjectMapper()
        .readTree(samples.resolve(capture + ".expected.json").toFile())
        .path("cylinders");
  }

  private static JsonNode cylinder(JsonNode results, JsonNode like) {
    return like(results.path("cylinders"), like, "cylinder");
  }

  /** The element of a list in which these keys have the same values. */
  private static JsonNode like(JsonNode list, JsonNode pattern, String... keys) {
    for (JsonNode each : list) {
      boolean same = true;
      for (String key : keys) {
        same &= each.path(key).asText().equals(pattern.path(key).asText());
      }
      if (same) {
        return each;
      }
    }
    throw new AssertionError("none like " + pattern + " in " + list);
  }

  private static double mm(JsonNode node, String key) {
    assertTrue(node.path(key).isNumber(), () -> key + " of " + node);
    return node.path(key).doubleValue();
  }

  private static byte[] fixture() {
    try (InputStream in = VersionOneTest.class.getResourceAsStream(FIXTURE)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String sha256(byte[] content) throws Exception {
    return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
  }
}
