package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class TiltPriorTest {
  private static final double RAD_PER_S = 3.7;
  private static final double KNOT_S = 0.07;

  @Test
  void aHarmonicOnALineCostsNothing() {
    double[] tap = new TiltPrior(1, RAD_PER_S, 0).taps(KNOT_S);
    double sum = 0;
    for (int k = 0; k < tap.length; k++) {
      sum += tap[k] * (0.3 + 0.2 * k + Math.sin(RAD_PER_S * KNOT_S * k + 1));
    }
    assertEquals(0, sum, 1e-14);
  }

  /** Without rocking the taps are the fourth difference. */
  @Test
  void withoutRockingTheFourthDifferenceIsLeft() {
    assertArrayEquals(new double[] {1, -4, 6, -4, 1}, new TiltPrior(1, 0, 0).taps(KNOT_S), 1e-15);
  }

  @Test
  void withStiffnessChangesNothingElse() {
    assertEquals(new TiltPrior(5, 2, 3), new TiltPrior(1, 2, 3).withStiffness(5));
  }
}
