package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every sample capture gives what the file beside it expects. */
class SamplesIT {
  private final Launcher program = Launcher.quick();

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    "bore-press, 0.000001",
    "bore-fixed, 0.000001",
    "bore-inch, 0.000001",
    "bore-damaged, 0.000001",
    "bore-rocked, 0.0015"
  })
  void aBoreSampleGivesItsDiameters(String name, double toleranceMm) {
    JsonNode expected = expected(name);
    JsonNode answer = replay(expected).json();
    assertEquals("Pumphouse three", answer.path("job").asText());
    assertTrue(answer.path("ledger_head").asText().matches("[0-9a-f]{32,}"), answer.toString());
    int compared = 0;
    for (JsonNode cylinder : expected.path("cylinders")) {
      JsonNode got = among(answer.path("cylinders"), cylinder).path("bore");
      compared += positions(cylinder.path("bore"), got, toleranceMm);
      compared += changes(cylinder, among(answer.path("cylinders"), cylinder), toleranceMm);
    }
    assertEquals(3 * (6 + 2 + 3 + 2), compared, "figures compared");
  }

  @ParameterizedTest
  @CsvSource({"gap-top", "gap-second"})
  void aGapSampleGivesItsGaps(String name) {
    JsonNode expected = expected(name);
    JsonNode answer = replay(expected).json();
    int compared = 0;
    for (JsonNode cylinder : expected.path("cylinders")) {
      JsonNode ring = cylinder.path("rings").get(0);
      JsonNode got =
          Json.among(
              among(answer.path("cylinders"), cylinder).path("rings"),
              "ring",
              ring.path("ring").asText());
      compared += gaps(ring, got);
    }
    assertEquals(3 * (3 * 3 + 1), compared, "figures compared");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bore-press",
        "bore-fixed",
        "bore-inch",
        "bore-damaged",
        "bore-rocked",
        "gap-top",
        "gap-second"
      })
  void aGaugeCheckFindsTheSamplesAndTheDamage(String name) {
    JsonNode expected = expected(name).path("gauge_check");
    Outcome outcome =
        program.run(
            "gauge",
            "check",
            "--json",
            "--gauge",
            Program.sample(expected.path("gauge").asText()).toString(),
            "--capture",
            Program.sample(name + ".capture.jsonl").toString());
    JsonNode answer = outcome.ended(expected.path("exit").asInt()).json();
    assertEquals(expected.path("samples").asInt(), answer.path("samples").size());
    assertEquals(expected.path("rejected_count").asInt(), answer.path("rejected").size());
    for (int i = 0; i < expected.path("rejected").size(); i++) {
      JsonNode got = answer.path("rejected").get(i);
      double expectedTs = expected.path("rejected").get(i).path("t").asDouble();
      assertEquals(expectedTs, got.path("t").asDouble(Double.NaN), 1e-9, got::toString);
      assertTrue(got.path("why").asText().length() > 5, got::toString);
      assertTrue(got.path("raw").asText().length() > 0, got::toString);
    }
  }

  @Test
  void aGaugeCheckGivesTheGaugesOwnValues() {
    Outcome outcome =
        program.run(
            "gauge",
            "check",
            "--json",
            "--gauge",
            Program.sample("inch-or-mm.gauge.toml").toString(),
            "--capture",
            Program.sample("bore-inch.capture.jsonl").toString());
    JsonNode samples = outcome.ended(0).json().path("samples");
    JsonNode readings = expected("bore-inch").path("readings");
    assertEquals(20, readings.size());
    for (int i = 0; i < readings.size(); i++) {
      double valueMm = readings.get(i).path("value_mm").asDouble();
      assertEquals(valueMm, samples.get(i).path("value_mm").asDouble(Double.NaN), 1e-12);
      assertEquals(
          readings.get(i).path("t").asDouble(), samples.get(i).path("t").asDouble(), 1e-12);
    }
  }

  @Test
  void theVerdictsOnThePressedBoresAreThoseOfTheScenario() {
    JsonNode cylinders = replay(expected("bore-press")).json().path("cylinders");
    assertEquals("within", state(cylinders.get(0), "taper"));
    assertEquals("within", state(cylinders.get(1), "taper"));
    boolean oneIsBeyond = false;
    for (JsonNode check : cylinders.get(2).path("bore").path("checks")) {
      boolean limit = Math.abs(check.path("limit_mm").asDouble() - 0.030) < 1e-9;
      oneIsBeyond |= limit && check.path("state").asText().equals("beyond");
    }
    assertTrue(oneIsBeyond, "cylinder 3 out of round: " + cylinders.get(2));
    assertEquals("wide-at-top", cylinders.get(1).path("bore").path("shape").asText());
  }

  @Test
  void aSecondRingIsFiledOrReadyByItsTightestPoint() {
    JsonNode cylinders = replay(expected("gap-second")).json().path("cylinders");
    JsonNode ready = Json.among(cylinders.get(0).path("rings"), "ring", "second");
    assertEquals("ready", ready.path("state").asText(), ready::toString);
    assertEquals(0.0, ready.path("remove_mm").asDouble(Double.NaN));
    JsonNode file = Json.among(cylinders.get(1).path("rings"), "ring", "second");
    assertEquals("file", file.path("state").asText(), file::toString);
    JsonNode expected = expected("gap-second").path("cylinders").get(1).path("rings").get(0);
    assertEquals(
        expected.path("remove_mm").asDouble(), file.path("remove_mm").asDouble(Double.NaN), 5e-4);
    JsonNode ungauged = Json.among(cylinders.get(0).path("rings"), "ring", "top");
    assertEquals("unknown", ungauged.path("state").asText(), ungauged::toString);
  }

  /** The tightest hot gap is read as the smallest hot gap over the travel, wherever it lies. */
  @Test
  void theHotGapIsTheSmallestOverTheTravel() {
    JsonNode expected = expected("gap-top");
    JsonNode cylinders = replay(expected).json().path("cylinders");
    for (int i = 0; i < 3; i++) {
      JsonNode ring = Json.among(cylinders.get(i).path("rings"), "ring", "top");
      double hotMm =
          expected
              .path("cylinders")
              .get(i)
              .path("rings")
              .get(0)
              .path("tightest_hot")
              .path("gap_mm")
              .asDouble();
      double answerMm = ring.path("tightest").path("hot_gap_mm").asDouble(Double.NaN);
      assertEquals(hotMm, answerMm, 5e-4, ring::toString);
    }
  }

  @Test
  void resultsSayTheSameAsTheReplayThatMadeTheLedger() {
    JsonNode replayed = replay(expected("gap-top")).json();
    Outcome outcome =
        program.run("results", "--json", "--ledger", new Bundle(folder).ledger()).ended(1);
    assertEquals(replayed.path("cylinders"), outcome.json().path("cylinders"));
    assertEquals(replayed.path("ledger_head"), outcome.json().path("ledger_head"));
  }

  private Outcome replay(JsonNode expected) {
    List<String> args = new ArrayList<>(List.of("replay", "--json"));
    JsonNode call = expected.path("replay");
    args.add("--job");
    args.add(Program.sample(call.path("job").asText()).toString());
    for (JsonNode capture : call.path("captures")) {
      args.add("--capture");
      args.add(Program.sample(capture.asText()).toString());
    }
    args.add("--ledger");
    args.add(new Bundle(folder).ledger());
    return program.run(args).ended(call.path("exit").asInt());
  }

  private static int positions(JsonNode expected, JsonNode got, double toleranceMm) {
    int compared = 0;
    for (JsonNode place : expected.path("positions")) {
      JsonNode answer =
          Json.position(
              got.path("positions"),
              place.path("depth_mm").asDouble(),
              place.path("axis").asText());
      compared += close(place, answer, "diameter_mm", toleranceMm);
    }
    for (String axis : List.of("thrust", "pin")) {
      compared += close(expected.path("taper_mm"), got.path("taper_mm"), axis, 2 * toleranceMm);
    }
    for (JsonNode out : expected.path("out_of_round_mm")) {
      JsonNode answer =
          Json.among(got.path("out_of_round_mm"), "depth_mm", out.path("depth_mm").asDouble());
      compared += close(out, answer, "value_mm", 2 * toleranceMm);
    }
    return compared;
  }

  /** The top ring's gap changes, which follow from the bores alone. */
  private static int changes(JsonNode expected, JsonNode got, double toleranceMm) {
    JsonNode ring = Json.among(expected.path("rings"), "ring", "top");
    JsonNode answer = Json.among(got.path("rings"), "ring", "top");
    int compared = 0;
    for (JsonNode gap : ring.path("gaps")) {
      double depthMm = gap.path("depth_mm").asDouble();
      if (depthMm > 12) {
        JsonNode same = Json.among(answer.path("gaps"), "depth_mm", depthMm);
        compared += close(gap, same, "expected_change_mm", 5 * toleranceMm);
      }
    }
    return compared;
  }

  private static int gaps(JsonNode expected, JsonNode got) {
    int compared = 0;
    for (JsonNode gap : expected.path("gaps")) {
      JsonNode answer = Json.among(got.path("gaps"), "depth_mm", gap.path("depth_mm").asDouble());
      compared += close(gap, answer, "measured_mm", 1e-9);
      compared += close(gap, answer, "expected_change_mm", 2e-6);
      compared += close(gap, answer, "expected_mm", 5e-4);
    }
    return compared + close(expected.path("tightest"), got.path("tightest"), "gap_mm", 5e-4);
  }

  private static int close(JsonNode expected, JsonNode got, String key, double tolerance) {
    assertTrue(expected.path(key).isNumber(), () -> key + " in " + expected);
    double answer = got.path(key).asDouble(Double.NaN);
    assertEquals(expected.path(key).asDouble(), answer, tolerance, () -> key + " in " + got);
    return 1;
  }

  private static JsonNode among(JsonNode cylinders, JsonNode cylinder) {
    return Json.among(cylinders, "cylinder", cylinder.path("cylinder").asInt());
  }

  private static String state(JsonNode cylinder, String check) {
    return Json.among(cylinder.path("bore").path("checks"), "check", check).path("state").asText();
  }

  private static JsonNode expected(String name) {
    return Json.file(Program.sample(name + ".expected.json"));
  }
}
