package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.truth.EllipsePerimeter;
import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigureIT {
  private static final double NANOMETRE = 1e-6;
  private final Launcher program = Launcher.quick();

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "96.061,96.047; 96.020,96.012",
        "96.0,96.0; 96.03,96.03",
        "96.012,96.020; 96.047,96.061",
        "82.01,81.99; 82.0,82.0",
        "400.0,250.0; 300.0,299.0"
      })
  void theGapChangesByTheDifferenceOfArcLengths(String from, String to) {
    JsonNode answer =
        program.run("figure", "gap-change", "--json", "--from", from, "--to", to).ended(0).json();
    double fromMm = perimeter(from);
    double toMm = perimeter(to);
    assertEquals(fromMm, answer.path("from_perimeter_mm").asDouble(Double.NaN), NANOMETRE);
    assertEquals(toMm, answer.path("to_perimeter_mm").asDouble(Double.NaN), NANOMETRE);
    assertEquals(toMm - fromMm, answer.path("gap_change_mm").asDouble(Double.NaN), 2 * NANOMETRE);
  }

  /** Perimeter 257.61059855216568 of 82.01 x 81.99: mpmath 1.2.1 at 40 digits, DLMF 19.30(i). */
  @Test
  void anOvalsPerimeterIsTheReferenceValue() {
    JsonNode answer =
        program
            .run("figure", "gap-change", "--json", "--from", "82.01,81.99", "--to", "82,82")
            .ended(0)
            .json();
    assertEquals(257.61059855216568, answer.path("from_perimeter_mm").asDouble(), 1e-9);
    assertEquals(StrictMath.PI * 82, answer.path("to_perimeter_mm").asDouble(), 1e-9);
  }

  /** Angle, gap error in a bore of 100 mm: mpmath 1.2.1, derived from the geometry of the cut. */
  @ParameterizedTest
  @CsvSource({
    "0.1, 0.0002392463112492",
    "0.5, 0.005981367314014",
    "1, 0.0239280887553",
    "3, 0.2156045590745",
    "10, 2.427843512466"
  })
  void aTiltedRingReadsTooWideByTheReferenceValue(double tiltDeg, double errorMm) {
    double riseMm = 50 * StrictMath.tan(StrictMath.toRadians(tiltDeg));
    String depths =
        "%s@0,20.0@90,%s@180,20.0@270".formatted(Double.toString(20 + riseMm), 20 - riseMm);
    JsonNode answer =
        program
            .run("figure", "tilt", "--json", "--bore", "100", "--depths", depths)
            .ended(0)
            .json();
    assertEquals(tiltDeg, answer.path("tilt_deg").asDouble(Double.NaN), 1e-9);
    assertEquals(errorMm, answer.path("gap_error_mm").asDouble(Double.NaN), 1e-9);
  }

  /**
   * Four places at right angles: the plane's slopes are the differences of opposite places over the
   * bore, whatever the third difference is (least squares by hand).
   */
  @Test
  void fourPlacesThatLieInNoPlaneGiveTheNearestOne() {
    JsonNode answer =
        program
            .run(
                "figure",
                "tilt",
                "--json",
                "--bore=96",
                "--depths=15.0@0,15.4@90,15.9@180,15.5@270")
            .ended(0)
            .json();
    double slope = StrictMath.hypot((15.9 - 15.0) / 96, (15.5 - 15.4) / 96);
    double tilt = StrictMath.atan(slope);
    double longMm = 96 / StrictMath.cos(tilt);
    assertEquals(StrictMath.toDegrees(tilt), answer.path("tilt_deg").asDouble(Double.NaN), 1e-9);
    assertEquals(
        EllipsePerimeter.ofDiametersMm(longMm, 96) - StrictMath.PI * 96,
        answer.path("gap_error_mm").asDouble(Double.NaN),
        1e-9);
  }

  @Test
  void threePlacesAtUnequalAnglesGiveTheirPlane() {
    double radius = 41;
    double slopeX = 0.004;
    double slopeY = -0.007;
    StringBuilder depths = new StringBuilder();
    for (int clockDeg : new int[] {10, 95, 260}) {
      double angle = StrictMath.toRadians(clockDeg);
      double depthMm =
          30 + radius * (slopeX * StrictMath.cos(angle) + slopeY * StrictMath.sin(angle));
      depths.append(depths.isEmpty() ? "" : ",").append(depthMm).append('@').append(clockDeg);
    }
    JsonNode answer =
        program
            .run("figure", "tilt", "--json", "--bore", "82", "--depths", depths.toString())
            .ended(0)
            .json();
    double tiltDeg = StrictMath.toDegrees(StrictMath.atan(StrictMath.hypot(slopeX, slopeY)));
    assertEquals(tiltDeg, answer.path("tilt_deg").asDouble(Double.NaN), 1e-9);
  }

  @Test
  void withoutJsonTheAnswerIsInWordsWithItsUnit() {
    Outcome outcome =
        program
            .run("figure", "gap-change", "--from", "96.061,96.047", "--to", "96.020,96.012")
            .ended(0);
    assertTrue(outcome.stdout().contains("mm"), outcome::toString);
    assertTrue(outcome.stdout().contains("0.119"), outcome::toString);
  }

  private static double perimeter(String diameters) {
    String[] two = diameters.split(",");
    return EllipsePerimeter.ofDiametersMm(
        Double.parseDouble(two[0].strip()), Double.parseDouble(two[1].strip()));
  }
}
