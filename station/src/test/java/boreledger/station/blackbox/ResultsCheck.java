package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.station.truth.Axis;
import boreledger.station.truth.BoreTruth;
import boreledger.station.truth.Engine;
import boreledger.station.truth.GapReading;
import boreledger.station.truth.GapTruth;
import boreledger.station.truth.Position;
import boreledger.station.truth.RingKind;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/**
 * Compares the program's answer with the model's, figure by figure, and counts what it compared.
 */
final class ResultsCheck {
  static final double DIAMETER_MM = 1e-6;
  static final double CHANGE_MM = 2e-6;

  private final JsonNode cylinders;
  private final String where;
  private int compared;

  ResultsCheck(JsonNode results, String where) {
    cylinders = results.path("cylinders");
    this.where = where;
  }

  int compared() {
    return compared;
  }

  /** Diameters, tapers and out-of-round of every cylinder. */
  ResultsCheck bores(Engine engine, BoreTruth truth, double toleranceMm) {
    assertEquals(engine.bores().size(), cylinders.size(), where + ": cylinders");
    for (Map.Entry<Position, BigDecimal> one : truth.diametersMm().entrySet()) {
      Position place = one.getKey();
      JsonNode position =
          Json.position(
              bore(place.cylinder()).path("positions"), place.depthMm(), place.axis().label());
      same(one.getValue().doubleValue(), position.path("diameter_mm"), toleranceMm, place);
    }
    for (int cylinder = 1; cylinder <= engine.bores().size(); cylinder++) {
      for (Axis axis : engine.axes()) {
        double taperMm = truth.taperMm(cylinder, axis).doubleValue();
        JsonNode answer = bore(cylinder).path("taper_mm").path(axis.label());
        same(taperMm, answer, 2 * toleranceMm, "taper " + cylinder + " " + axis);
      }
      for (double depthMm : engine.depthsDownMm()) {
        double outMm = truth.outOfRoundMm(cylinder, depthMm).doubleValue();
        JsonNode answer = Json.among(bore(cylinder).path("out_of_round_mm"), "depth_mm", depthMm);
        same(outMm, answer.path("value_mm"), 2 * toleranceMm, "out of round " + cylinder);
      }
    }
    return this;
  }

  /** What each gap reading was, and the change that the bores predict. */
  ResultsCheck gaps(GapTruth truth, List<GapReading> readings, double changeToleranceMm) {
    JsonNode gaps = ring(truth.cylinder(), truth.ring()).path("gaps");
    for (GapReading reading : readings) {
      JsonNode gap = Json.among(gaps, "depth_mm", reading.depthMm());
      same(reading.mm().doubleValue(), gap.path("measured_mm"), 1e-9, reading);
      double changeMm = truth.expectedChangeMm(reading.depthMm());
      same(changeMm, gap.path("expected_change_mm"), changeToleranceMm, "change at " + reading);
    }
    return this;
  }

  /** What averages over a ring's readings: each reading told by the others, the tightest point. */
  ResultsCheck lengths(GapTruth truth, List<GapReading> readings, double toleranceMm) {
    JsonNode ring = ring(truth.cylinder(), truth.ring());
    if (readings.size() > 1) {
      for (GapReading reading : readings) {
        JsonNode gap = Json.among(ring.path("gaps"), "depth_mm", reading.depthMm());
        double expectedMm = truth.expectedMm(reading, readings);
        same(expectedMm, gap.path("expected_mm"), toleranceMm, "expected at " + reading);
      }
    }
    double tightestMm = truth.tightestMm(truth.meanLengthMm(readings)).gapMm();
    same(tightestMm, ring.path("tightest").path("gap_mm"), toleranceMm, "tightest " + truth.ring());
    return this;
  }

  private JsonNode bore(int cylinder) {
    return Json.among(cylinders, "cylinder", cylinder).path("bore");
  }

  private JsonNode ring(int cylinder, RingKind ring) {
    return Json.among(
        Json.among(cylinders, "cylinder", cylinder).path("rings"), "ring", ring.name());
  }

  private void same(double expected, JsonNode answer, double tolerance, Object what) {
    if (!answer.isNumber()) {
      throw new AssertionError(where + ": " + what + " is no number but " + answer);
    }
    assertEquals(expected, answer.doubleValue(), tolerance, () -> where + ": " + what);
    compared++;
  }
}
