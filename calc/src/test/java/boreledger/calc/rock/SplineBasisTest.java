package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class SplineBasisTest {
  private static final double[] TIMES_S = {1, 1.03, 1.5, 1.77, 2.0, 2.49, 2.5};

  /** At a knot a quintic B-spline has 1, 26, 66, 26, 1 hundred-and-twentieths (any spline text). */
  @Test
  void valuesAtAKnotAreTheTabulatedOnes() {
    SplineBasis basis = new SplineBasis(TIMES_S, 0.5);
    double[] expected = {1 / 120.0, 26 / 120.0, 66 / 120.0, 26 / 120.0, 1 / 120.0, 0};
    assertArrayEquals(expected, basis.values(0), 1e-15);
    assertArrayEquals(expected, basis.values(4), 1e-15);
    assertEquals(2, basis.start(4));
  }

  @Test
  void allOnesGiveOneWithoutSlope() {
    SplineBasis basis = new SplineBasis(TIMES_S, 0.13);
    double[] ones = new double[basis.size()];
    Arrays.fill(ones, 1);
    for (int i = 0; i < TIMES_S.length; i++) {
      assertEquals(1, basis.at(i, ones), 1e-14);
      assertEquals(0, basis.slopeAt(i, ones), 1e-12);
      assertEquals(1, basis.valueAt(TIMES_S[i], ones), 1e-14);
    }
  }

  /** A spline of degree five whose coefficients are the knots' own averages gives back the time. */
  @Test
  void risingCoefficientsGiveAStraightLine() {
    double knotS = 0.13;
    SplineBasis basis = new SplineBasis(TIMES_S, knotS);
    double[] rising = new double[basis.size()];
    for (int k = 0; k < rising.length; k++) {
      rising[k] = TIMES_S[0] + knotS * (k - 2);
    }
    for (int i = 0; i < TIMES_S.length; i++) {
      assertEquals(TIMES_S[i], basis.at(i, rising), 1e-13);
      assertEquals(1, basis.slopeAt(i, rising), 1e-12);
    }
  }

  @Test
  void slopeIsThatOfTheValues() {
    SplineBasis basis = new SplineBasis(TIMES_S, 0.2);
    double[] wavy = new double[basis.size()];
    for (int k = 0; k < wavy.length; k++) {
      wavy[k] = Math.sin(1.7 * k);
    }
    double h = 1e-5;
    for (int i = 1; i < TIMES_S.length - 1; i++) {
      double difference =
          (basis.valueAt(TIMES_S[i] + h, wavy) - basis.valueAt(TIMES_S[i] - h, wavy)) / (2 * h);
      assertEquals(difference, basis.slopeAt(i, wavy), 1e-6);
    }
  }
}
