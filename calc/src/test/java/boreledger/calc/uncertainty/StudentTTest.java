package boreledger.calc.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.ReferenceTable;
import boreledger.calc.reference.Seeds;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class StudentTTest {
  @Test
  void everyFigureOfTableG2IsMet() {
    List<Map<String, String>> rows = ReferenceTable.rows("gum_g2_t_values.csv");
    int compared = 0;
    for (Map<String, String> row : rows) {
      String nu = row.get("nu");
      double degrees = nu.equals("inf") ? Double.POSITIVE_INFINITY : Double.parseDouble(nu);
      for (String level : List.of("68.27", "90", "95", "95.45", "99", "99.73")) {
        double expected = Double.parseDouble(row.get("p" + level));
        double found = StudentT.coverageFactor(Double.parseDouble(level) / 100, degrees);
        assertEquals(expected, found, 0.00005001, "nu " + nu + " level " + level);
        compared++;
      }
    }
    assertEquals(168, compared);
  }

  @Test
  void quantilesAgreeWithTwoOtherLibraries() {
    Seeds.each(
        random -> {
          double p = Seeds.between(random, 0.55, 0.999);
          double nu = Seeds.between(random, 1.5, 200);
          double found = StudentT.quantile(p, nu);
          double one =
              new org.apache.commons.math3.distribution.TDistribution(nu)
                  .inverseCumulativeProbability(p);
          double two =
              new org.hipparchus.distribution.continuous.TDistribution(nu)
                  .inverseCumulativeProbability(p);
          // Both solve to an absolute 1e-9.
          assertEquals(one, found, 2e-8 * Math.max(1, found));
          assertEquals(two, found, 2e-8 * Math.max(1, found));
        });
  }

  @Test
  void shareBelowIsTheQuantilesInverse() {
    assertEquals(0.95, StudentT.cumulative(StudentT.quantile(0.95, 7.5), 7.5), 1e-12);
    assertEquals(0.5, StudentT.cumulative(0, 3), 1e-15);
  }

  @Test
  void aProbabilityOutsideItsRangeIsRefused() {
    for (double p : new double[] {0, 1, -0.1, 1.1, Double.NaN}) {
      ImpossibleInput refused = assertThrows(ImpossibleInput.class, () -> StudentT.quantile(p, 5));
      assertEquals("probability " + p + " is not between 0 and 1", refused.getMessage());
    }
  }

  @Test
  void noDegreesOfFreedomAreRefused() {
    ImpossibleInput refused = assertThrows(ImpossibleInput.class, () -> StudentT.cumulative(1, 0));
    assertEquals("degrees of freedom 0.0 are not above zero", refused.getMessage());
  }
}
