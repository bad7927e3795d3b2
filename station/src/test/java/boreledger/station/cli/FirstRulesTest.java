package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.audit.AuditedLedger;
import boreledger.station.session.Version;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A ledger under the first rules, by which settled readings were rounded: the README beside it says
 * how it was made. What it says is right, though this program would say it otherwise.
 */
class FirstRulesTest {
  private static final String FOLDER = "/boreledger/station/ledger/";
  private static final double TOLERANCE_MM = 1e-15;
  private static final long SESSION = 7;

  @TempDir Path folder;
  private AuditedLedger ledger;

  @BeforeEach
  void copy() throws Exception {
    Path file = folder.resolve("first.db");
    ledger = AuditedLedger.at(Files.write(file, resource("rules-0.0.ledger")));
  }

  @Test
  void itIsIntactAndEveryReadingComesOutAgainByItsOwnRules() {
    JsonNode audit = audit(0);

    assertTrue(audit.path("intact").asBoolean());
    assertEquals(20, audit.path("recomputed").asInt());
    assertEquals(0, audit.path("differing").asInt());
    assertEquals("0.0.9", audit.at("/programs/0").asText());
  }

  @Test
  void everyFigureThatWouldComeOutOtherwiseNowIsGivenAsThenAndAsNow() {
    JsonNode audit = audit(0);

    Map<Long, double[]> expected = figures();
    int compared = 0;
    for (JsonNode each : audit.path("otherwise_now")) {
      assertEquals("value_mm", each.path("figure").asText());
      double[] figures = expected.remove(each.path("entry").asLong());
      assertEquals(figures[0], each.path("as_then").asDouble());
      assertEquals(figures[1], each.path("as_now").asDouble(), TOLERANCE_MM);
      assertEquals("0.0.9", each.path("program_then").asText());
      assertEquals(Version.PROGRAM, each.path("program_now").asText());
      assertTrue(each.path("rules_then").asText().endsWith("rounded to the resolution"));
      assertTrue(each.path("rules_now").asText().endsWith("not rounded"));
      compared++;
    }
    assertEquals(19, compared);
    assertEquals(19, audit.path("otherwise_now_in_all").asInt());
    double[] same = expected.remove(18L);
    assertEquals(same[0], same[1], "its mean needs no rounding");
    assertTrue(expected.isEmpty());
  }

  @Test
  void theWordsNameBothVersionsAndNobodyAsATamperer() {
    Ran words = Ran.command("audit", "--ledger", ledger.file()).ended(0);

    assertTrue(words.out().startsWith("Intact: 28 entries"), words::toString);
    assertTrue(words.out().contains("Nobody altered them."), words::toString);
    assertTrue(
        words
            .out()
            .contains(
                "entry 9, cylinder 1, 12 mm below the deck, thrust axis: value_mm 0.023 as program"
                    + " 0.0.9 computed it, 0.02314285714285714"),
        words::toString);
    assertTrue(words.out().contains(" as " + Version.PROGRAM + " does\n"), words::toString);
  }

  @Test
  void aValueAlteredUnderOldRulesIsStillFound() {
    ledger
        .exchanged(9, "\"value_mm\":0.023,\"standard", "\"value_mm\":0.025,\"standard")
        .rechained();

    JsonNode audit = audit(1);
    assertFalse(audit.path("intact").asBoolean());
    assertEquals(1, audit.path("differing").asInt());
    assertEquals(
        "value_mm is stored as 0.025, computed again as 0.023 (taken by program 0.0.9, checked by "
            + Version.PROGRAM
            + ")",
        audit.at("/findings/0/what").asText());
  }

  @Test
  void theSameReadingsUnderTheNewRulesWouldBeFound() {
    ledger.exchanged(SESSION, "\"program\":\"0.0.9\"", "\"program\":\"0.1.0\"").rechained();

    JsonNode audit = audit(1);
    assertEquals(19, audit.path("differing").asInt());
    assertEquals(0, audit.path("otherwise_now").size());
  }

  private JsonNode audit(int status) {
    return Ran.command("audit", "--ledger", ledger.file(), "--json").ended(status).json();
  }

  /** By entry, as then and as now. */
  private static Map<Long, double[]> figures() {
    Map<Long, double[]> figures = new HashMap<>();
    new String(resource("rules-0.0.figures.csv"), StandardCharsets.UTF_8)
        .lines()
        .filter(line -> Character.isDigit(line.charAt(0)))
        .map(line -> line.split(","))
        .forEach(
            cells ->
                figures.put(
                    Long.valueOf(cells[0]),
                    new double[] {Double.parseDouble(cells[1]), Double.parseDouble(cells[2])}));
    assertEquals(20, figures.size());
    return figures;
  }

  private static byte[] resource(String name) {
    try (InputStream in = FirstRulesTest.class.getResourceAsStream(FOLDER + name)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
