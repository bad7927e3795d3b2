package boreledger.calc.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.ReferenceTable;
import java.util.Map;
import org.junit.jupiter.api.Test;

class RelativeRangeTest {
  @Test
  void exactValuesAreMet() {
    // Two readings: d2 = 2 / root pi, d2^2 + d3^2 = 2. Three: d2 = 3 / root pi.
    RelativeRange two = RelativeRange.integrate(2);
    assertEquals(2 / Math.sqrt(Math.PI), two.d2(), 1e-7);
    assertEquals(Math.sqrt(2 - 4 / Math.PI), two.d3(), 1e-7);
    assertEquals(3 / Math.sqrt(Math.PI), RelativeRange.integrate(3).d2(), 1e-7);
  }

  @Test
  void everyFigureOfTheD2StarTableIsMet() {
    int compared = 0;
    for (int m = 2; m <= 20; m++) {
      RelativeRange range = RelativeRange.integrate(m);
      for (Map<String, String> row : ReferenceTable.rows("d2_star.csv")) {
        String g = row.get("g");
        double found = g.equals("inf") ? range.d2() : range.d2Star(Integer.parseInt(g));
        double expected = Double.parseDouble(row.get("m" + m));
        assertEquals(expected, found, 0.0000051, "m " + m + " g " + g);
        compared++;
      }
    }
    assertEquals(19 * 24, compared);
  }

  @Test
  void factorsOfTheStudyAreThePrintedOnes() {
    // AIAG MSA 4th ed., K1, and K2 and K3 for 2 to 10 (from memory; recomputed).
    assertEquals(0.8862, 1 / RelativeRange.of(2).d2(), 5e-5);
    assertEquals(0.5908, 1 / RelativeRange.of(3).d2(), 5e-5);
    double[] printed = {0.7071, 0.5231, 0.4467, 0.4030, 0.3742, 0.3534, 0.3375, 0.3249, 0.3146};
    for (int i = 0; i < printed.length; i++) {
      assertEquals(printed[i], 1 / RelativeRange.of(i + 2).d2Star(1), 5e-5, "of " + (i + 2));
    }
  }

  @Test
  void sizeAskedForAgainHasTheSameFigures() {
    assertEquals(RelativeRange.integrate(7), RelativeRange.of(7));
    assertEquals(RelativeRange.of(7), RelativeRange.of(7));
  }

  @Test
  void oneReadingHasNoRange() {
    assertEquals(
        "1 readings of a range given, at least 2 needed",
        assertThrows(ImpossibleInput.class, () -> RelativeRange.of(1)).getMessage());
  }
}
