package boreledger.calc.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.ReferenceTable;
import boreledger.calc.reference.Seeds;
import java.util.List;
import java.util.Map;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Test;

class EllipticIntegralTest {
  @Test
  void meetsFiguresOfTwentyDigits() {
    List<Map<String, String>> rows = ReferenceTable.rows("elliptic_E.csv");
    assertEquals(9, rows.size());
    for (Map<String, String> row : rows) {
      double expected = Double.parseDouble(row.get("E"));
      double found = EllipticIntegral.secondKind(Double.parseDouble(row.get("m_equals_k_squared")));
      assertEquals(expected, found, 1e-15 * expected, row.toString());
    }
  }

  @Test
  void agreesWithAnotherLibraryOverTheWholeRange() {
    Seeds.each(
        random -> {
          double m = random.nextDouble();
          double other = LegendreEllipticIntegral.bigE(m);
          assertEquals(other, EllipticIntegral.secondKind(m), 5e-15, "m " + m);
        });
  }

  @Test
  void staysExactWhereTheEllipseIsAlmostFlat() {
    double m = 1 - 1e-12;
    assertEquals(LegendreEllipticIntegral.bigE(m), EllipticIntegral.secondKind(m), 1e-14);
  }

  @Test
  void aParameterOutsideItsRangeIsRefused() {
    for (double m : new double[] {-1e-9, 1.000001, Double.NaN}) {
      ImpossibleInput refused =
          assertThrows(ImpossibleInput.class, () -> EllipticIntegral.secondKind(m));
      assertEquals("parameter m " + m + " of E(m) is not between 0 and 1", refused.getMessage());
    }
  }
}
