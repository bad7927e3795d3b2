package boreledger.calc.ring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.ReferenceTable;
import boreledger.calc.reference.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

class RingTiltTest {
  private static List<ClockDepth> depths(double... depthThenClock) {
    List<ClockDepth> depths = new ArrayList<>();
    for (int i = 0; i < depthThenClock.length; i += 2) {
      depths.add(new ClockDepth(depthThenClock[i + 1], depthThenClock[i]));
    }
    return depths;
  }

  @Test
  void everyComputedTiltIsMetFromDepthsRoundTheClock() {
    int compared = 0;
    for (Map<String, String> row : ReferenceTable.rows("ring_tilt.csv")) {
      double boreMm = Double.parseDouble(row.get("bore_mm"));
      double tiltDeg = Double.parseDouble(row.get("tilt_deg"));
      double rise = boreMm / 2 * Math.tan(Math.toRadians(tiltDeg));
      List<ClockDepth> clock = new ArrayList<>();
      for (double deg : new double[] {0, 90, 180, 270}) {
        clock.add(new ClockDepth(deg, 30 + rise * Math.cos(Math.toRadians(deg - 25))));
      }
      RingTilt tilt = RingTilt.of(boreMm, clock);
      assertEquals(tiltDeg, tilt.tiltDeg(), 1e-11, row.toString());
      double expected = Double.parseDouble(row.get("gap_increase_mm"));
      assertEquals(expected, tilt.gapErrorMm(), 1e-11 * expected + 1e-15, row.toString());
      compared++;
    }
    assertEquals(20, compared);
  }

  @Test
  void oneEdgeDeeperByOneMillimetreReadsEightMicrometresTooWide() {
    // From the geometry, 96 mm bore: tilt 0.0104, error 0.008 mm; 3 mm: 0.074 mm.
    RingTilt one = RingTilt.of(96, depths(20.5, 0, 20, 90, 19.5, 180, 20, 270));
    assertEquals(0.0104, Math.toRadians(one.tiltDeg()), 0.00005);
    assertEquals(0.008, one.gapErrorMm(), 0.0005);
    assertEquals(1, one.edgeDifferenceMm(), 1e-12);
    RingTilt three = RingTilt.of(96, depths(21.5, 0, 20, 90, 18.5, 180, 20, 270));
    assertEquals(0.074, three.gapErrorMm(), 0.0005);
  }

  @Test
  void equalDepthsHaveNoTiltAndNoError() {
    RingTilt tilt = RingTilt.of(96, depths(15, 0, 15, 90, 15, 180, 15, 270));
    assertEquals(0, tilt.tiltDeg());
    assertEquals(0, tilt.gapErrorMm());
  }

  @Test
  void planeIsThatOfAnotherLibrarysLeastSquares() {
    Seeds.each(
        random -> {
          int n = 3 + random.nextInt(6);
          double[] z = new double[n];
          double[][] xy = new double[n][];
          List<ClockDepth> clock = new ArrayList<>();
          for (int i = 0; i < n; i++) {
            double deg = 360.0 * i / n + Seeds.between(random, 0, 30);
            z[i] = 15 + random.nextGaussian();
            xy[i] =
                new double[] {
                  48 * Math.cos(Math.toRadians(deg)), 48 * Math.sin(Math.toRadians(deg))
                };
            clock.add(new ClockDepth(deg - 360 * random.nextInt(3), z[i]));
          }
          RingTilt tilt = RingTilt.of(96, clock);
          if (n > 3) {
            OLSMultipleLinearRegression plane = new OLSMultipleLinearRegression();
            plane.newSampleData(z, xy);
            double[] b = plane.estimateRegressionParameters();
            assertEquals(Math.hypot(b[1], b[2]), tilt.tangent(), 1e-12);
          }
          assertTrue(tilt.gapErrorMm() >= 0);
        });
  }

  @Test
  void threePositionsGiveThePlaneThroughAllThree() {
    double slope = 0.02;
    List<ClockDepth> clock = new ArrayList<>();
    for (double deg : new double[] {0, 120, 200}) {
      double p = 48 * Math.cos(Math.toRadians(deg));
      clock.add(new ClockDepth(deg, 15 + slope * p));
    }
    assertEquals(slope, RingTilt.of(96, clock).tangent(), 1e-13);
  }

  @Test
  void fewerThanThreeDifferentPositionsAreRefused() {
    assertEquals(
        "2 different clock positions given, at least 3 needed, a degree or more apart",
        refusal(depths(15, 0, 15.4, 90, 15.9, 360)));
    assertEquals(
        "1 different clock positions given, at least 3 needed, a degree or more apart",
        refusal(depths(15, 10, 15.4, 10, 15.9, 370)));
    assertEquals(
        "2 different clock positions given, at least 3 needed, a degree or more apart",
        refusal(depths(15, 0, 15.4, 90, 15.9, 359.5)));
    assertEquals(
        "0 different clock positions given, at least 3 needed, a degree or more apart",
        refusal(List.of()));
  }

  private static String refusal(List<ClockDepth> clock) {
    return assertThrows(ImpossibleInput.class, () -> RingTilt.of(96, clock)).getMessage();
  }

  @Test
  void positionsOneDegreeApartAreDifferent() {
    RingTilt tilt = RingTilt.of(96, depths(15, 0, 15, 1, 15, 359));
    assertEquals(0, tilt.tiltDeg());
  }

  @Test
  void negativeClockPositionsTurnTheOtherWay() {
    RingTilt one = RingTilt.of(96, depths(15, 0, 15.4, 90, 15.9, 180, 15.5, 270));
    RingTilt other = RingTilt.of(96, depths(15, 0, 15.4, -270, 15.9, -180, 15.5, -90));
    assertEquals(one.tiltDeg(), other.tiltDeg(), 1e-12);
  }

  @Test
  void impossibleNumbersAreRefused() {
    assertThrows(ImpossibleInput.class, () -> RingTilt.of(0, depths(1, 0, 1, 90, 1, 180)));
    assertThrows(ImpossibleInput.class, () -> new RingTilt(0, 0));
    assertThrows(ImpossibleInput.class, () -> new RingTilt(96, -1));
    assertThrows(ImpossibleInput.class, () -> new ClockDepth(Double.NaN, 1));
    assertThrows(ImpossibleInput.class, () -> new ClockDepth(0, -1));
  }
}
