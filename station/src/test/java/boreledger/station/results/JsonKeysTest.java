package boreledger.station.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.session.SmallJob;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The keys that scripts rely on, and what they hold. */
class JsonKeysTest {
  private static final String PROMISED =
      """
      {"job":"Pumphouse three","ledger_head":"<hex>","cylinders":[
        {"cylinder":1,
         "bore":{
           "positions":[{"depth_mm":12.0,"axis":"thrust","diameter_mm":96.0213,
             "expanded_uncertainty_mm":0.0030}],
           "taper_mm":{"thrust":0.0310,"pin":0.0275},
           "out_of_round_mm":[{"depth_mm":12.0,"value_mm":0.0060}],
           "shape":"wide-at-top",
           "checks":[{"check":"taper","value_mm":0.0310,"limit_mm":0.050,
             "expanded_uncertainty_mm":0.0024,"state":"within"}]},
         "rings":[
           {"ring":"top",
            "gaps":[{"depth_mm":12.0,"measured_mm":0.480,"expected_change_mm":0.0,
              "expected_mm":0.4812,"en":-0.2}],
            "tightest":{"depth_mm":108.0,"gap_mm":0.385,"hot_gap_mm":0.21},
            "target_mm":0.52,"remove_mm":0.135,"state":"file"}]}]}
      """;

  private final SmallJob job = SmallJob.standard();

  @Test
  void aWholeAnswerHasEveryPromisedKeyWithItsKindOfValue() throws Exception {
    Computed computed =
        Computed.of(
            job,
            Sitting.ofBores(job).opening(0).bores(12, 0.028, 0.02).bores(60, 0.01, 0.01).closing(0),
            Sitting.ofGaps(job).gap(12, 0.48).gap(60, 0.43));

    assertEquals(List.of(), missing("", promised(), computed.json()));
  }

  @Test
  void anAnswerFromNothingHasEveryPromisedKeyOrNull() throws Exception {
    Computed computed = Computed.of(job, Sitting.ofBores(job));

    assertEquals(List.of(), missing("", promised(), computed.json()));
  }

  @Test
  void theComparisonSeesAKeyThatIsMissing() throws Exception {
    JsonNode promised = promised();
    JsonNode lacking = promised.deepCopy();
    ((ObjectNode) lacking.at("/cylinders/0/rings/0")).remove("remove_mm");

    assertEquals(List.of("/cylinders/0/rings/0/remove_mm"), missing("", promised, lacking));
  }

  @Test
  void taperGoesByTheJobsOwnNamesOfItsAxes() {
    SmallJob own = job.with("[\"thrust\", \"pin\"]", "[\"leftRight\", \"fore aft\"]");

    JsonNode taper = Computed.of(own, Sitting.ofBores(own)).bore().path("taper_mm");

    List<String> names = new ArrayList<>();
    taper.fieldNames().forEachRemaining(names::add);
    assertEquals(List.of("leftRight", "fore aft"), names);
  }

  @Test
  void statesAreOfTheClosedSets() {
    Computed computed =
        Computed.of(
            job,
            Sitting.ofBores(job).opening(0).bores(12, 0.05, 0.02).bores(60, 0, 0.01).closing(0),
            Sitting.ofGaps(job).gap(12, 0.48).gap(60, 0.43));

    int checks = 0;
    for (JsonNode check : computed.bore().path("checks")) {
      checks++;
      assertTrue(
          Set.of("within", "beyond", "undecided").contains(check.path("state").asText()),
          check::toString);
    }
    assertEquals(5, checks);
    assertTrue(
        Set.of("file", "ready", "too-wide", "unknown")
            .contains(computed.json().at("/cylinders/0/rings/0/state").asText()));
  }

  private static JsonNode promised() throws Exception {
    return new ObjectMapper().readTree(PROMISED);
  }

  /** Where a promised key is missing, or holds another kind of value; null may stand anywhere. */
  private static List<String> missing(String path, JsonNode promised, JsonNode found) {
    if (found.isNull()) {
      return List.of();
    }
    if (promised.isObject() && found.isObject()) {
      return missingKeys(path, promised, found);
    }
    List<String> missing = new ArrayList<>();
    if (promised.isArray() && found.isArray()) {
      for (int i = 0; i < found.size(); i++) {
        missing.addAll(missing(path + "/" + i, promised.get(0), found.get(i)));
      }
      return missing;
    }
    boolean alike =
        promised.isNumber() && found.isNumber() || promised.isTextual() && found.isTextual();
    return alike ? List.of() : List.of(path);
  }

  private static List<String> missingKeys(String path, JsonNode promised, JsonNode found) {
    List<String> missing = new ArrayList<>();
    for (Map.Entry<String, JsonNode> key : promised.properties()) {
      String there = path + "/" + key.getKey();
      if (found.has(key.getKey())) {
        missing.addAll(missing(there, key.getValue(), found.get(key.getKey())));
      } else {
        missing.add(there);
      }
    }
    return missing;
  }
}
