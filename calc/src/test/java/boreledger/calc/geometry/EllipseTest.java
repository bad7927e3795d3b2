package boreledger.calc.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.ReferenceTable;
import boreledger.calc.reference.Seeds;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class EllipseTest {
  @Test
  void perimeterMeetsPublishedFigures() {
    List<Map<String, String>> rows = ReferenceTable.rows("ellipse_perimeter.csv");
    assertEquals(10, rows.size());
    for (Map<String, String> row : rows) {
      double a = Double.parseDouble(row.get("a"));
      double b = Double.parseDouble(row.get("b"));
      double expected = Double.parseDouble(row.get("perimeter"));
      double found = Ellipse.ofDiameters(2 * a, 2 * b).perimeterMm();
      assertEquals(expected, found, 1e-14 * expected, row.toString());
    }
  }

  @Test
  void ovalBoreIsLongerThanItsMeanCircleByNanometres() {
    // Computed with 20 digits: 257.610598552166 for 82.010 x 81.990, the circle 257.610597594363.
    double perimeterMm = Ellipse.ofDiameters(82.010, 81.990).perimeterMm();
    assertEquals(257.610598552166, perimeterMm, 1e-12 * 257);
    assertEquals(9.578e-7, perimeterMm - Math.PI * 82, 1e-10);
  }

  @Test
  void excessOverTheMinorCircleIsTheDifferenceOfPerimeters() {
    for (double major : new double[] {82.0, 82.0001, 83, 90, 99, 101, 150, 800}) {
      Ellipse ellipse = new Ellipse(major, 82);
      double plain = ellipse.perimeterMm() - Math.PI * 82;
      assertEquals(plain, ellipse.excessOverMinorCircleMm(), 1e-12 * major, "major " + major);
    }
  }

  @Test
  void excessIsSmoothWhereSeriesGivesWayToTheMean() {
    // h = 0.01 is where major : minor = 1.1 : 0.9.
    double justBelow = new Ellipse(109.9999999, 90).excessOverMinorCircleMm();
    double justAbove = new Ellipse(110.0000001, 90).excessOverMinorCircleMm();
    assertEquals(justBelow, justAbove, 4e-7);
    assertEquals(new Ellipse(109.9999999, 90).perimeterMm() - Math.PI * 90, justBelow, 1e-12 * 110);
  }

  @Test
  void tiltedCutMeetsComputedFigures() {
    List<Map<String, String>> rows = ReferenceTable.rows("ring_tilt.csv");
    assertEquals(20, rows.size());
    for (Map<String, String> row : rows) {
      double boreMm = Double.parseDouble(row.get("bore_mm"));
      double tangent = Math.tan(Math.toRadians(Double.parseDouble(row.get("tilt_deg"))));
      double expected = Double.parseDouble(row.get("gap_increase_mm"));
      assertEquals(
          expected,
          Ellipse.tiltedCutExcessMm(boreMm, tangent),
          1e-12 * expected + 1e-15,
          row.toString());
    }
  }

  @Test
  void tiltedCutKeepsItsDigitsForTheSmallestTilt() {
    // First term of the series, pi D t^2 / 4; the next is smaller by t^2.
    for (double t : new double[] {1e-4, 1e-6, 1e-9}) {
      double expected = Math.PI * 96 * t * t / 4;
      assertEquals(expected, Ellipse.tiltedCutExcessMm(96, t), 1e-7 * expected, "tilt " + t);
    }
  }

  @Test
  void scalingTheAxesScalesThePerimeter() {
    Seeds.each(
        random -> {
          double one = Seeds.between(random, 10, 200);
          double other = Seeds.between(random, 10, 200);
          double factor = Seeds.between(random, 0.1, 10);
          double expected = factor * Ellipse.ofDiameters(one, other).perimeterMm();
          double found = Ellipse.ofDiameters(factor * other, factor * one).perimeterMm();
          assertEquals(expected, found, 1e-14 * expected * 4);
        });
  }

  @Test
  void axesInTheWrongOrderAreRefused() {
    ImpossibleInput refused = assertThrows(ImpossibleInput.class, () -> new Ellipse(81, 82));
    assertEquals("minor axis 82.0 mm is longer than the major axis 81.0 mm", refused.getMessage());
  }

  @Test
  void axesOfNothingAreRefused() {
    assertEquals(
        "minor axis 0.0 mm is not above zero",
        assertThrows(ImpossibleInput.class, () -> Ellipse.ofDiameters(82, 0)).getMessage());
    assertEquals(
        "major axis Infinity mm is not a finite number",
        assertThrows(ImpossibleInput.class, () -> Ellipse.ofDiameters(82, Double.POSITIVE_INFINITY))
            .getMessage());
  }

  @Test
  void aTiltOfNoSizeIsRefused() {
    assertThrows(ImpossibleInput.class, () -> Ellipse.tiltedCutExcessMm(96, -0.1));
    assertThrows(ImpossibleInput.class, () -> Ellipse.tiltedCutExcessMm(0, 0.1));
  }
}
