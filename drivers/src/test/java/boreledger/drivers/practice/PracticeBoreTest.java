package boreledger.drivers.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class PracticeBoreTest {
  @Test
  void perimeterOfARoundBoreIsPiTimesItsDiameter() {
    PracticeBore round = new PracticeBore(96, 0, 10, 30, 0, 0, 0);
    assertEquals(Math.PI * 96, round.perimeterMm(50), 1e-9);
  }

  @Test
  void anOvalHasItsLargestDiameterWhereItPoints() {
    PracticeBore oval = new PracticeBore(96, 0.02, 10, 30, 0, 0.012, 0);
    assertEquals(0.012, oval.diameterMm(10, 0) - oval.diameterMm(10, 90), 1e-12);
  }

  @Test
  void aTaperedBoreNarrowsDownwards() {
    PracticeBore tapered = new PracticeBore(96, 0, 10, 30, 1e-4, 0, 0);
    assertEquals(-1e-4, tapered.slope(50, 0), 1e-9);
    assertEquals(96 - 0.005, tapered.diameterMm(50, 0), 1e-12);
  }

  @Test
  void wornBoresStayNearTheirLimitsAndDifferByTheirSeed() {
    double last = 0;
    for (long seed = 1; seed <= 200; seed++) {
      PracticeBore bore = PracticeBore.worn(new Random(seed), 96.000, 96.030, 104);
      for (double depthMm = 5; depthMm < 115; depthMm += 5) {
        for (double deg : new double[] {0, 90}) {
          double mm = bore.diameterMm(depthMm, deg);
          assertTrue(mm > 95.98 && mm < 96.09, "seed " + seed + ": " + mm);
        }
      }
      assertTrue(bore.baseMm() != last, "seed " + seed);
      last = bore.baseMm();
    }
  }
}
