package boreledger.station.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EllipsePerimeterTest {
  private static final double NANOMETRE = 1e-6;

  /**
   * Half-axes and perimeter. The row 3.5, 2.1 is printed in the SciPy documentation of {@code
   * ellipe}; the others were computed with mpmath 1.2.1 at 40 digits from 4a·E(k), DLMF 19.30(i).
   */
  @ParameterizedTest
  @CsvSource({
    "1, 1, 6.2831853071795864769",
    "2, 1, 9.6884482205476761984",
    "3, 2, 15.865439589290589791",
    "3.5, 2.1, 17.868899204378689926",
    "5, 3, 25.526998863398128466",
    "5, 4, 28.361667888974484631",
    "10, 1, 40.639741801008957426",
    "41.005, 40.995, 257.61059855216568473",
    "50.05, 49.95, 314.15934389880057233",
    "6378137, 6356752.314245, 40007862.917250327813"
  })
  void agreesWithEllipticIntegralsToTwelveDigits(double a, double b, double perimeter) {
    assertEquals(perimeter, EllipsePerimeter.ofDiametersMm(2 * a, 2 * b), 1e-12 * perimeter);
  }

  @Test
  void standsAThousandTimesInsideTheNanometreForBores() {
    assertEquals(
        257.61059855216568473, EllipsePerimeter.ofDiametersMm(82.01, 81.99), NANOMETRE / 1000);
    assertEquals(
        314.15934389880057233, EllipsePerimeter.ofDiametersMm(100.1, 99.9), NANOMETRE / 1000);
  }

  /** A plane tilted by 5° cuts a cylinder of 100 mm: mpmath 1.2.1, derived from the geometry. */
  @Test
  void agreesForTheEllipseThatATiltedRingFills() {
    double longMm = 100 / StrictMath.cos(StrictMath.toRadians(5));
    assertEquals(
        314.759569987840412, EllipsePerimeter.ofDiametersMm(longMm, 100), NANOMETRE / 1000);
  }

  @Test
  void doesNotMindWhichDiameterComesFirst() {
    assertEquals(
        EllipsePerimeter.ofDiametersMm(96.068, 96.021),
        EllipsePerimeter.ofDiametersMm(96.021, 96.068),
        1e-12);
  }

  @Test
  void refusesADiameterThatIsNotPositive() {
    assertThrows(IllegalArgumentException.class, () -> EllipsePerimeter.ofDiametersMm(96, 0));
    assertThrows(
        IllegalArgumentException.class, () -> EllipsePerimeter.ofDiametersMm(Double.NaN, 96));
  }
}
