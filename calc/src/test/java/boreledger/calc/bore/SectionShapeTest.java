package boreledger.calc.bore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.calc.geometry.Ellipse;
import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class SectionShapeTest {
  private static final double RADIUS = 41;
  private static final double LOBE = 0.01;

  /** What a gauge with two contacts reads on evenly spaced axes of {@code r = R + A cos(n phi)}. */
  private static List<Double> twoPoint(int lobes, int axes, double turnedDeg) {
    DoubleUnaryOperator radius =
        phi -> RADIUS + LOBE * Math.cos(lobes * (phi - Math.toRadians(turnedDeg)));
    List<Double> diameters = new ArrayList<>();
    for (int k = 0; k < axes; k++) {
      double phi = Math.PI * k / axes;
      diameters.add(radius.applyAsDouble(phi) + radius.applyAsDouble(phi + Math.PI));
    }
    return diameters;
  }

  private static double rangeMm(List<Double> diameters) {
    return diameters.stream().mapToDouble(each -> each).max().orElseThrow()
        - diameters.stream().mapToDouble(each -> each).min().orElseThrow();
  }

  @Test
  void oddLobesCannotBeSeenOnAnyNumberOfAxes() {
    // Constant width: each two-point diameter is 2R (Peng, MS thesis, UNC Charlotte 2015;
    // geometry).
    for (int lobes : new int[] {3, 5, 7}) {
      for (int axes = 2; axes <= 6; axes++) {
        assertEquals(0, rangeMm(twoPoint(lobes, axes, 17)), 1e-12);
      }
    }
  }

  @Test
  void ovalOnItsAxesShowsFourTimesItsAmplitude() {
    assertEquals(4 * LOBE, rangeMm(twoPoint(2, 2, 0)), 1e-12);
  }

  @Test
  void ovalTurnedToTwoAxesShowsOnlyTheCosineOfTwiceTheAngle() {
    assertEquals(4 * LOBE * 0.5, rangeMm(twoPoint(2, 2, 30)), 1e-12);
    assertEquals(0, rangeMm(twoPoint(2, 2, 45)), 1e-12);
  }

  @Test
  void fourLobesHideFromTwoPerpendicularAxesButNotFromFour() {
    assertEquals(0, rangeMm(twoPoint(4, 2, 0)), 1e-12);
    assertEquals(4 * LOBE, rangeMm(twoPoint(4, 4, 0)), 1e-12);
  }

  @Test
  void oneDiameterIsACircle() {
    assertEquals(Math.PI * 96, SectionShape.through(List.of(96.0)).perimeterMm(), 1e-12);
  }

  @Test
  void twoDiametersAreTheEllipsesAxesInEitherOrder() {
    Ellipse expected = new Ellipse(82.010, 81.990);
    assertEquals(expected, SectionShape.through(List.of(82.010, 81.990)));
    assertEquals(expected, SectionShape.through(List.of(81.990, 82.010)));
  }

  @Test
  void threeOrMoreAxesFindAnOvalHoweverItIsTurned() {
    for (int axes = 3; axes <= 8; axes++) {
      for (double turnedDeg = 0; turnedDeg < 180; turnedDeg += 7) {
        Ellipse found = SectionShape.through(twoPoint(2, axes, turnedDeg));
        assertEquals(2 * RADIUS + 2 * LOBE, found.majorMm(), 1e-12);
        assertEquals(2 * RADIUS - 2 * LOBE, found.minorMm(), 1e-12);
      }
    }
  }

  @Test
  void fourAxesOfACircleAreACircle() {
    Ellipse found = SectionShape.through(List.of(96.0, 96.0, 96.0, 96.0));
    assertEquals(96, found.majorMm(), 1e-12);
    assertEquals(96, found.minorMm(), 1e-12);
  }

  @Test
  void swappingTheAxesLeavesThePerimeter() {
    Seeds.each(
        random -> {
          double one = Seeds.between(random, 60, 120);
          double other = one + Seeds.between(random, -0.1, 0.1);
          assertEquals(
              SectionShape.through(List.of(one, other)).perimeterMm(),
              SectionShape.through(List.of(other, one)).perimeterMm());
        });
  }

  @Test
  void noDiameterIsRefused() {
    assertEquals(
        "0 diameters of a section given, at least 1 needed",
        assertThrows(ImpossibleInput.class, () -> SectionShape.through(List.of())).getMessage());
    assertEquals(
        "diameter 0.0 mm is not above zero",
        assertThrows(ImpossibleInput.class, () -> SectionShape.through(List.of(96.0, 96.0, 0.0)))
            .getMessage());
  }
}
