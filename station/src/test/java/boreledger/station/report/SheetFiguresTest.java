package boreledger.station.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.report.InventedLedger.Shape;
import boreledger.station.results.AnswerJson;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The figures on the sheet against those of the results, which are rounded here once more by
 * themselves: two significant digits of the expanded uncertainty, the value to match (JCGM 100,
 * 7.2.6).
 */
class SheetFiguresTest {
  @TempDir Path folder;
  private int compared;

  @BeforeEach
  void nothingComparedYet() {
    compared = 0;
  }

  @ParameterizedTest
  @ValueSource(strings = {"mm", "in"})
  void everyFigureOfTheResultsIsThereRounded(String unit) throws Exception {
    InventedLedger ledger =
        new InventedLedger(folder, Shape.usual().with(unit)).bores().gaps(2).gauged();
    JsonNode results = new ObjectMapper().readTree(AnswerJson.write(ledger.results()));
    ledger.sheet(folder.resolve("s.pdf"), Paper.A4);
    double perUnit = unit.equals("in") ? 25.4 : 1;

    try (ReadSheet sheet = ReadSheet.of(folder.resolve("s.pdf"))) {
      String words = sheet.words();
      for (JsonNode cylinder : results.path("cylinders")) {
        JsonNode bore = cylinder.path("bore");
        for (JsonNode each : bore.path("positions")) {
          has(words, each, "diameter_mm", "expanded_uncertainty_mm", perUnit);
        }
        for (JsonNode each : bore.path("out_of_round_mm")) {
          has(words, each, "value_mm", "expanded_uncertainty_mm", perUnit);
        }
        for (JsonNode each : bore.path("checks")) {
          has(words, each, "value_mm", "expanded_uncertainty_mm", perUnit);
        }
        for (JsonNode ring : cylinder.path("rings")) {
          for (JsonNode each : ring.path("gaps")) {
            has(words, each, "measured_mm", "measured_uncertainty_mm", perUnit);
          }
          has(words, ring.path("tightest"), "gap_mm", "expanded_uncertainty_mm", perUnit);
          has(words, ring.path("taper_from_gaps"), "amount_mm", "expanded_uncertainty_mm", perUnit);
        }
      }
    }
    assertEquals(3 * (6 + 3 + 5 + 2 * (3 + 2)), compared);
  }

  @Test
  void agreementsAndTargetsAreThere() throws Exception {
    InventedLedger ledger = new InventedLedger(folder, Shape.usual()).bores().gaps(2).gauged();
    JsonNode results = new ObjectMapper().readTree(AnswerJson.write(ledger.results()));
    ledger.sheet(folder.resolve("s.pdf"), Paper.LETTER);

    try (ReadSheet sheet = ReadSheet.of(folder.resolve("s.pdf"))) {
      String words = sheet.words();
      int seen = 0;
      for (JsonNode gap : results.findValues("gaps").get(0)) {
        String en =
            new BigDecimal(gap.path("en").asDouble())
                .setScale(2, RoundingMode.HALF_EVEN)
                .toPlainString();
        String plain = en.equals("0.00") ? en : en.replace('-', '\u2212');
        assertTrue(words.contains(" " + plain), () -> plain + " in " + words);
        seen++;
      }
      assertEquals(3, seen);
      for (JsonNode origin : results.findValues("origin")) {
        assertTrue(words.contains(origin.asText()), origin::asText);
      }
      assertTrue(words.contains("0.0055 × bore"), words);
      assertTrue(words.contains("file 0."), words);
    }
  }

  @Test
  void everyCautionIsThereTwiceAndSoAreThoseThatAlwaysHold() throws Exception {
    // No closing check, and gaps below the maker's smallest of 0.40 mm.
    InventedLedger ledger = new InventedLedger(folder, Shape.usual()).bores(19).gaps(2).gauged();
    JsonNode results = new ObjectMapper().readTree(AnswerJson.write(ledger.results()));
    ledger.sheet(folder.resolve("s.pdf"), Paper.A4);
    List<String> cautions = new ArrayList<>();
    results
        .findValues("cautions")
        .forEach(list -> list.forEach(each -> cautions.add(each.asText())));

    try (ReadSheet sheet = ReadSheet.of(folder.resolve("s.pdf"))) {
      String words = sheet.words();
      assertTrue(cautions.size() >= 3, cautions::toString);
      for (String caution : cautions) {
        int times = words.split(Pattern.quote(caution), -1).length - 1;
        assertTrue(times >= 2, () -> times + " times " + caution + " in " + words);
      }
      for (String standing : SheetCautions.STANDING) {
        assertTrue(words.contains("Caution: " + standing), () -> standing + " in " + words);
      }
    }
  }

  @Test
  void aBoreBeyondItsLimitIsACautionThatNamesTheMakersData() throws Exception {
    new InventedLedger(folder, Shape.usual())
        .bores()
        .gauged()
        .sheet(folder.resolve("s.pdf"), Paper.A4);

    try (ReadSheet sheet = ReadSheet.of(folder.resolve("s.pdf"))) {
      String words = sheet.words();
      assertTrue(
          words.matches(
              ".*Caution: largest diameter of 96\\.\\d+ ± 0\\.\\d+ mm is beyond the limit, at most"
                  + " 96\\.030\\. The engine maker's data decide\\..*"),
          words);
    }
  }

  @Test
  void noVerdictIsABareWord() throws Exception {
    new InventedLedger(folder, Shape.usual())
        .bores()
        .gaps(2)
        .gauged()
        .sheet(folder.resolve("s.pdf"), Paper.A4);

    try (ReadSheet sheet = ReadSheet.of(folder.resolve("s.pdf"))) {
      assertFalse(sheet.words().matches(".*\\bOK\\b.*"), sheet.words());
      assertFalse(sheet.words().contains("null"), sheet.words());
      assertFalse(sheet.words().contains("NaN"), sheet.words());
    }
  }

  @Test
  void whatTheFiguresRestOnIsPrinted() throws Exception {
    InventedLedger ledger = new InventedLedger(folder, Shape.usual()).bores().gaps(2).gauged();
    ledger.sheet(folder.resolve("s.pdf"), Paper.A4);

    try (ReadSheet sheet = ReadSheet.of(folder.resolve("s.pdf"))) {
      String words = sheet.words();
      ledger
          .results()
          .tables()
          .forEach(table -> assertTrue(words.contains(table.file() + " " + table.sha256()), words));
      ledger
          .results()
          .gauges()
          .forEach(gauge -> assertTrue(words.contains(gauge.profile()), gauge::toString));
      assertTrue(words.contains("grey-iron 11.4 µm/(m K) block, bore's wall"), words);
      assertTrue(words.contains("ring 200.0 °C (common practice, no source)"), words);
      assertTrue(words.contains("No. 7, bore 2031-05-06 08:00 UTC"), words);
      assertTrue(words.contains("+0.0010 0.0010 not said"), words);
      assertTrue(words.contains("by A. Turner, boreledger"), words);
      assertTrue(words.contains("Sheet made 2031-05-07 12:00 UTC"), words);
    }
  }

  private void has(String words, JsonNode node, String value, String uncertainty, double perUnit) {
    BigDecimal u =
        new BigDecimal(node.path(uncertainty).asDouble() / perUnit)
            .round(new MathContext(2, RoundingMode.HALF_UP));
    BigDecimal number =
        new BigDecimal(node.path(value).asDouble() / perUnit)
            .setScale(u.scale(), RoundingMode.HALF_UP);
    String expected = number.toPlainString() + " ± " + u.toPlainString();
    assertTrue(words.contains(expected), () -> expected + " of " + node + " in " + words);
    compared++;
  }
}
