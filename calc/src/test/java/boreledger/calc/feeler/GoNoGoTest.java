package boreledger.calc.feeler;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.Seeds;
import boreledger.calc.uncertainty.Estimate;
import org.junit.jupiter.api.Test;

class GoNoGoTest {
  @Test
  void gapIsTheMiddleWithTheVariancesOfTwoRectangles() {
    // GUM 4.3.7: a rectangle of half-width a has variance a^2 / 3. 0.005 and 0.01 by hand:
    // (25 + 100) / 3 = 41.667, its root 6.455 micrometres.
    Estimate gap = new GoNoGo(0.45, 0.47, 0.005).gap();
    assertEquals(0.46, gap.valueMm(), 0);
    assertEquals(0.006454972, gap.standardUncertaintyMm(), 1e-9);
    assertEquals(2, gap.budget().components().size());
  }

  @Test
  void stepIsExactInDecimals() {
    assertEquals(0.1, new GoNoGo(0.2, 0.3, 0).stepMm(), 0);
  }

  @Test
  void spreadOfMadeUpGapsIsTheStandardUncertainty() {
    Estimate gap = new GoNoGo(0.45, 0.47, 0.005).gap();
    double[] squares = new double[1];
    Seeds.each(
        random -> {
          for (int i = 0; i < 20; i++) {
            double trueMm =
                Seeds.between(random, 0.45, 0.47) + Seeds.between(random, -0.005, 0.005);
            squares[0] += Math.pow(trueMm - gap.valueMm(), 2);
          }
        });
    double spreadMm = Math.sqrt(squares[0] / (20.0 * Seeds.COUNT));
    assertTrue(Math.abs(spreadMm / gap.standardUncertaintyMm() - 1) < 0.02, spreadMm + " mm");
  }

  @Test
  void leafThatWillNotGoMustBeThicker() {
    assertEquals(
        "leaf that will not go 0.45 mm is not thicker than the leaf that goes 0.45 mm",
        assertThrows(ImpossibleInput.class, () -> new GoNoGo(0.45, 0.45, 0.005)).getMessage());
    assertThrows(ImpossibleInput.class, () -> new GoNoGo(0, 0.45, 0.005));
    assertThrows(ImpossibleInput.class, () -> new GoNoGo(0.4, 0.45, -0.005));
  }
}
