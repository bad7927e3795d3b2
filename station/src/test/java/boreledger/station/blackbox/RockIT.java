package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.truth.Bench;
import boreledger.station.truth.PumphouseThree;
import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The rocked sample, one reading per place, apart from any job. */
class RockIT {
  /** Noise of 0.7 µm and a digit step of 1 µm, over at least six swings. */
  private static final double TOLERANCE_MM = 0.0015;

  @Test
  void everyRockGivesTheDiameterThatTheModelHas() {
    JsonNode readings =
        Launcher.quick()
            .run(
                "figure",
                "rock",
                "--json",
                "--gauge",
                Program.sample("signed-decimal-rocked.gauge.toml").toString(),
                "--capture",
                Program.sample("bore-rocked.capture.jsonl").toString())
            .ended(0)
            .json()
            .path("readings");
    assertEquals(20, readings.size(), "18 places between two checks on the setting ring");
    Bench bench = PumphouseThree.engine().bench();
    List<Double> trueMm = trueDiameters();
    double openingMm = value(readings.get(0));
    double closingMm = value(readings.get(19));
    for (int i = 1; i < 19; i++) {
      // The places follow each other at nearly even times, and the zero walks by 0.0001 mm only.
      double zeroMm = openingMm + (closingMm - openingMm) * i / 19;
      double diameterMm =
          bench
              .diameterAt20Mm(
                  BigDecimal.valueOf(value(readings.get(i))), BigDecimal.valueOf(zeroMm))
              .doubleValue();
      assertEquals(trueMm.get(i - 1), diameterMm, TOLERANCE_MM, "place " + i);
      assertTrue(readings.get(i).path("rocks").asInt() >= 2, readings.get(i)::toString);
      double u = readings.get(i).path("standard_uncertainty_mm").asDouble(Double.NaN);
      assertTrue(u > 0 && u < 0.002, readings.get(i)::toString);
    }
  }

  private static List<Double> trueDiameters() {
    List<Double> diameters = new ArrayList<>();
    for (JsonNode cylinder :
        Json.file(Program.sample("bore-rocked.expected.json")).path("cylinders")) {
      for (JsonNode place : cylinder.path("bore").path("positions")) {
        diameters.add(place.path("true_diameter_mm").asDouble());
      }
    }
    return diameters;
  }

  private static double value(JsonNode reading) {
    return reading.path("value_mm").asDouble(Double.NaN);
  }
}
