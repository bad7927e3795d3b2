package boreledger.calc.ring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.bore.BoreGauging;
import boreledger.calc.bore.BoreProfile;
import boreledger.calc.bore.BoreReading;
import boreledger.calc.bore.Diameter;
import boreledger.calc.bore.GaugeAccuracy;
import boreledger.calc.bore.Repeatability;
import boreledger.calc.bore.SettingStandard;
import boreledger.calc.bore.ThermalUncertainty;
import boreledger.calc.bore.ZeroCheck;
import boreledger.calc.bore.ZeroLine;
import boreledger.calc.reference.Seeds;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Bores and gaps made up with errors as large as their budgets say: a falsified gap is found, and
 * true ones are left alone as often as a 95 % coverage promises.
 */
class FalsifiedGapTest {
  private static final double[] DEPTHS = {12, 36, 60, 84, 108};
  private static final double[] TRUE_MM = {96.060, 96.045, 96.030, 96.022, 96.018};
  private static final double IRON = 11.4e-6;
  private static final double TEMP = 22;
  private static final Budget GAUGE =
      GapBudget.byGauge(GaugeAccuracy.of(0.01, 0.01), Repeatability.stated(0.004));

  private static final BoreGauging SESSION =
      new BoreGauging(
          SettingStandard.ring(96, 0.001, 11.5e-6),
          ZeroLine.of(new ZeroCheck(0, 0, TEMP), new ZeroCheck(100, 0.001, TEMP)),
          GaugeAccuracy.of(0.001, 0.002),
          Repeatability.stated(0.0008),
          TEMP,
          IRON,
          ThermalUncertainty.DEFAULT);

  private static double even(Random random, double halfWidth) {
    return (2 * random.nextDouble() - 1) * halfWidth;
  }

  private static BoreProfile readBore(Random random) {
    double settingError = random.nextGaussian() * 0.0005;
    double linearity = even(random, 0.002);
    List<Diameter> read = new ArrayList<>();
    for (int j = 0; j < DEPTHS.length; j++) {
      // Linearity: an error that grows along the travel of the gauge, 0.002 mm over the whole
      // taper.
      double part = (TRUE_MM[j] - TRUE_MM[4]) / (TRUE_MM[0] - TRUE_MM[4]);
      for (String axis : List.of("thrust", "pin")) {
        double true20 = TRUE_MM[j] * (1 + IRON * (TEMP - 20));
        double setting = (96 + settingError) * (1 + 11.5e-6 * (TEMP - 20));
        double value =
            true20
                - setting
                + 0.0005
                + linearity * part
                + even(random, 0.0005)
                + random.nextGaussian() * 0.0008;
        read.add(SESSION.diameter(new BoreReading(DEPTHS[j], axis, 50, value, null)));
      }
    }
    return BoreProfile.of(read);
  }

  private static List<GapAgreement> agreements(Random random, int falsified, double byMm) {
    List<GapReading> gaps = new ArrayList<>();
    for (int j = 0; j < DEPTHS.length; j++) {
      double ringMm = (Math.PI * 96.018 - 0.40) * (1 + IRON * (TEMP - 20));
      double gap = Math.PI * TRUE_MM[j] * (1 + IRON * (TEMP - 20)) - ringMm;
      gap += even(random, 0.01) + even(random, 0.005) + random.nextGaussian() * 0.004;
      gaps.add(new GapReading(DEPTHS[j], gap + (j == falsified ? byMm : 0), TEMP, GAUGE));
    }
    return new GappedRing(readBore(random), IRON, Ring.of(IRON), gaps).agreements();
  }

  /** Expanded uncertainty of a gap against what is expected of it. */
  private static double comparisonMm() {
    Expectation.Predicted predicted =
        (Expectation.Predicted) agreements(new Random(0), -1, 0).get(2).expectation();
    return Math.hypot(GAUGE.expandedMm(), predicted.gap().expandedUncertaintyMm());
  }

  @Test
  void gapFalsifiedByThreeTimesItsUncertaintyIsFound() {
    double threeUMm = 3 * GAUGE.expandedMm();
    int found =
        Seeds.count(
            random -> {
              int falsified = random.nextInt(5);
              double sign = random.nextBoolean() ? 1 : -1;
              GapAgreement bad = agreements(random, falsified, sign * threeUMm).get(falsified);
              return Math.abs(bad.expectation().en()) > 1;
            });
    assertTrue(found >= 950, found + " of 1000 found");
    assertTrue(threeUMm < 3 * comparisonMm());
  }

  @Test
  void trueGapsAreLeftAlone() {
    int[] compared = new int[1];
    int[] blamed = new int[1];
    Seeds.each(
        random -> {
          for (GapAgreement each : agreements(random, -1, 0)) {
            compared[0]++;
            blamed[0] += Math.abs(each.expectation().en()) > 1 ? 1 : 0;
          }
        });
    assertEquals(5000, compared[0]);
    assertTrue(blamed[0] <= 0.07 * compared[0], blamed[0] + " of 5000 blamed");
  }

  @Test
  void taperIsKnownBetterThanASizeInEveryCylinder() {
    Seeds.each(
        random -> {
          BoreProfile bore = readBore(random);
          double taper = bore.largestTaper().orElseThrow().amount().standardUncertaintyMm();
          double size = bore.largest().size().standardUncertaintyMm();
          assertTrue(taper < size, taper + " against " + size);
          Estimate round = bore.largestOutOfRound().orElseThrow();
          assertTrue(round.standardUncertaintyMm() < size);
        });
  }
}
