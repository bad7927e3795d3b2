package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the figures answer, held against values from outside. */
class FigureAnswersTest {
  private static final double NANOMETRE = 1e-6;

  @TempDir Path folder;

  /**
   * pi D (1 + ab dTb) - (pi D - g0)(1 + ar dTr), with coefficients from Callister & Rethwisch,
   * Table B.6; computed with mpmath, derived from the geometry and not published.
   */
  @ParameterizedTest
  @CsvSource({
    "100, 0.30, 11.4e-6, 11.4e-6, 100, 100, 0.3002736, 0",
    "100, 0.30, 11.4e-6, 11.4e-6, 200, 120, 0.0141023499926, 0",
    "100, 0.40, 11.7e-6, 21.5e-6, 200, 130, 0.482209649728, 0",
    "82, 0.25, 11.3e-6, 11.4e-6, 220, 110, -0.0673264774314, 1"
  })
  void theHotGapIsThatOfFreeExpansionAndButtingEndsAskForAttention(
      String bore,
      String gap,
      String ring,
      String block,
      String hot,
      String wall,
      double hotMm,
      int status) {
    JsonNode answer =
        Ran.command(
                "figure",
                "hot-gap",
                "--json",
                "--bore",
                bore,
                "--cold-gap",
                gap,
                "--ring-cte",
                ring,
                "--block-cte",
                block,
                "--ring-temp",
                hot,
                "--wall-temp",
                wall)
            .ended(status)
            .json();

    assertEquals(hotMm, answer.path("hot_gap_mm").asDouble(), 1e-9);
    assertTrue(answer.path("cold_gap_for_zero_mm").isNumber());
  }

  /** Common practice, no source: about 0.52 mm at a bore a little over 80 mm, boosted hard. */
  @Test
  void theTargetOfATopRingBoostedHardIsAboutHalfAMillimetreAtEightyTwo() {
    JsonNode answer = target("82", "boosted-hard", "top");

    assertEquals(0.52, answer.path("target_mm").asDouble(), 0.01);
    assertTrue(answer.path("origin").asText().contains("no source"));
  }

  /** Common practice, no source: at least 0.004 of the bore, and a maker's 0.25 to 0.47 mm. */
  @Test
  void thePlainTopRingLiesInAMakersRangeAndTheSecondAboveIt() {
    double topMm = target("82", "plain", "top").path("target_mm").asDouble();
    double secondMm = target("82", "plain", "second").path("target_mm").asDouble();

    assertTrue(topMm >= 0.004 * 82 - NANOMETRE && topMm >= 0.25 && topMm <= 0.47, "" + topMm);
    assertTrue(secondMm > topMm);
    assertTrue(target("82", "plain", "oil").path("target_mm").isNull());
  }

  @Test
  void everyUseOfTheTableWantsASecondRingNotBelowTheTopRing() {
    int uses = 0;
    for (String use :
        new String[] {
          "plain", "spirited", "boosted", "boosted-hard", "nitrous", "diesel-boosted"
        }) {
      uses++;
      assertTrue(
          target("96", use, "second").path("target_mm").asDouble()
              >= target("96", use, "top").path("target_mm").asDouble(),
          use);
    }
    assertEquals(6, uses);
  }

  /**
   * By hand: ring 2 is 0.15 mm shorter than ring 1. As listed 0.20 mm and nothing come off; the
   * other way round 0.05 and 0.10 mm.
   */
  @Test
  void theLeastIsFiledOffInAll() throws Exception {
    Path file = folder.resolve("rings.json");
    Files.writeString(
        file,
        """
        {"bores":[{"name":"a","perimeter_mm":300.0,"target_mm":0.5,"max_mm":0.9},
                  {"name":"b","perimeter_mm":300.1,"target_mm":0.5,"max_mm":0.9}],
         "rings":[{"name":"1","gap_mm":0.30,"in_perimeter_mm":300.0},
                  {"name":"2","gap_mm":0.45,"in_perimeter_mm":300.0}]}
        """);

    JsonNode answer = Ran.command("figure", "match", "--json", "--file", file).ended(0).json();

    assertEquals(0.15, answer.path("total_remove_mm").asDouble(), NANOMETRE);
    assertEquals(0.20, answer.path("as_listed_remove_mm").asDouble(), NANOMETRE);
    assertEquals("2", answer.path("assignment").get(0).path("ring").asText());
    assertEquals("a", answer.path("assignment").get(0).path("bore").asText());
  }

  @Test
  void leavesAddUpToTheDecimal() {
    JsonNode stacks =
        Ran.command(
                "figure", "feelers", "--json", "--gap", "0.3", "--leaves=0.1,0.2,0.05", "--most=2")
            .ended(0)
            .json()
            .path("stacks");

    assertEquals("[0.1,0.2]", stacks.get(0).path("leaves_mm").toString());
    assertEquals("0.3", stacks.get(0).path("total_mm").toString());
    assertEquals("0.0", stacks.get(0).path("off_mm").toString());
  }

  /** 96.21 + 0.004 mm needs more than 96 + 0.25 - 0.05 mm: the next oversize. */
  @Test
  void theOversizeLeavesTheHoneItsStockAndNoneIsNull() {
    JsonNode answer = oversize("96.21,96.08").ended(0).json();

    assertEquals(0.5, answer.path("oversize_mm").asDouble());
    assertEquals(96.5, answer.path("finished_mm").asDouble());
    assertTrue(oversize("97.2").ended(1).json().path("oversize_mm").isNull());
  }

  /** AIAG MSA, 4th edition, chapter III section B: the crossed study of 10 parts. */
  @Test
  void theGaugeStudyGivesThePublishedFiguresByBothMethods() throws Exception {
    JsonNode answer =
        Ran.command("figure", "gauge-study", "--json", "--file", study(), "--tolerance", "5")
            .ended(0)
            .json();

    JsonNode anova = answer.path("anova");
    assertEquals(0.199933, anova.path("ev").asDouble(), 5e-6);
    assertEquals(0.226838, anova.path("av").asDouble(), 5e-6);
    assertEquals(0, anova.path("interaction").asDouble());
    assertEquals(0.302373, anova.path("grr").asDouble(), 5e-6);
    assertEquals(1.042327, anova.path("pv").asDouble(), 5e-6);
    assertEquals(4.861, anova.path("ndc").asDouble(), 1e-3);
    JsonNode range = answer.path("average_range");
    assertEquals(0.20188, range.path("ev").asDouble(), 5e-5);
    assertEquals(0.22963, range.path("av").asDouble(), 5e-5);
    assertEquals(0.30575, range.path("grr").asDouble(), 5e-5);
    assertEquals(1.10456, range.path("pv").asDouble(), 5e-5);
    assertEquals(26.68, range.path("percent_grr").asDouble(), 0.01);
  }

  @Test
  void aStudyWithAMissingReadingSaysWhichOne() throws Exception {
    Path file = folder.resolve("study.csv");
    String whole = Files.readString(study());
    Files.writeString(file, whole.substring(0, whole.stripTrailing().lastIndexOf('\n') + 1));

    Ran ran = Ran.command("figure", "gauge-study", "--file", file).refused(2);

    assertTrue(ran.err().startsWith(file + ": part "), ran.err());
    assertTrue(ran.err().contains("missing"), ran.err());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "hot-gap --bore 96 --cold-gap 0.45 --ring-cte 12 --block-cte 11e-6 --ring-temp 220"
            + " --wall-temp 130",
        "target --bore 96 --rule reckless --ring top",
        "target --bore -1 --rule plain --ring top",
        "feelers --gap 0.5 --leaves 0.1,-0.2",
        "feelers --gap zero --leaves 0.1",
        "oversize --nominal 96 --largest 96.2 --uncertainty -1 --oversizes 0.5"
            + " --honing-allowance 0.05",
        "go-no-go --snug 0.55 --refused 0.50 --leaf-error 0.005",
        "filing --gap 0.4 --uncertainty 0.005 --target 0.5 --pass 10-0.3",
        "match --file nowhere.json",
        "gauge-study --file nowhere.csv",
        "linearity --file nowhere.csv",
        "stability --file nowhere.csv",
        "rock --gauge nowhere.gauge.toml --capture nowhere.capture.jsonl"
      })
  void badArgumentsAreRefusedInOneLine(String words) {
    Ran.command((Object[]) ("figure " + words).split(" ")).refused(2);
  }

  private static JsonNode target(String bore, String rule, String ring) {
    return Ran.command("figure", "target", "--json", "--bore", bore, "--rule", rule, "--ring", ring)
        .ended(0)
        .json();
  }

  private static Ran oversize(String largest) {
    return Ran.command(
        "figure",
        "oversize",
        "--json",
        "--nominal",
        "96",
        "--largest",
        largest,
        "--uncertainty",
        "0.004",
        "--oversizes",
        "0.25,0.5,1",
        "--honing-allowance",
        "0.05");
  }

  private static Path study() throws URISyntaxException {
    return Path.of(FigureAnswersTest.class.getResource("grr_crossed_10x3x3.csv").toURI());
  }
}
