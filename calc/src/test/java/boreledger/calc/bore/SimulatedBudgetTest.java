package boreledger.calc.bore;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * The budget against a simulation of the whole measurement, as JCGM 101:2008 (Supplement 1 to the
 * GUM) propagates distributions: every input is drawn, the readings a gauge would then show are
 * made up, and the computed diameters scatter as the budget says.
 */
class SimulatedBudgetTest {
  private static final int DRAWS = 60_000;
  private static final double TRUE_M = 96.002;
  private static final double AM = 11.5e-6;
  private static final double AB = 21.5e-6;
  private static final double TM = 23;
  private static final double TB = 26;
  private static final double DZ = 0.0014;

  private static BoreGauging session() {
    return new BoreGauging(
        SettingStandard.ring(TRUE_M, 0.0012, AM),
        ZeroLine.of(new ZeroCheck(0, 0, TM), new ZeroCheck(1000, DZ, TM)),
        GaugeAccuracy.of(0.001, 0.002),
        Repeatability.stated(0.0008),
        TB,
        AB,
        ThermalUncertainty.DEFAULT);
  }

  private static double even(Random random, double halfWidth) {
    return (2 * random.nextDouble() - 1) * halfWidth;
  }

  /** What all readings of one simulated session share. */
  private record World(
      double settingError,
      double tm,
      double am,
      double tb,
      double ab,
      double growthK,
      double zeroRound,
      double zeroScatter,
      double linearity,
      double zeroWander) {
    static World draw(Random random) {
      return new World(
          random.nextGaussian() * 0.0006,
          TM + random.nextGaussian() * 0.5,
          AM + random.nextGaussian() * 0.5e-6,
          TB + random.nextGaussian() * 0.5,
          AB + random.nextGaussian() * 0.5e-6,
          random.nextGaussian() * 0.5,
          even(random, 0.0005),
          // Two checks, and all readings midway: the zero is their mean.
          (random.nextGaussian() + random.nextGaussian()) / 2 * 0.0008,
          even(random, 0.002),
          even(random, DZ / 2));
    }

    /** The reading for a bore; a gauge that warmed and grew shows too little. */
    double reading(Random random, double d20, boolean withLinearity) {
      double atBore = d20 * (1 + ab * (tb - 20));
      double setting = (TRUE_M + settingError) * (1 + am * (tm - 20));
      double errors = withLinearity ? linearity + zeroWander : 0;
      return atBore
          - setting
          - d20 * 11.5e-6 * growthK
          + DZ / 2
          + zeroRound
          + zeroScatter
          + errors
          + even(random, 0.0005)
          + random.nextGaussian() * 0.0008;
    }
  }

  @Test
  void sizesScatterAsTheirBudgetSays() {
    Random random = new Random(20_24);
    BoreGauging session = session();
    double[] found = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      double reading = World.draw(random).reading(random, 96.05, true);
      found[i] = session.diameter(new BoreReading(12, "pin", 500, reading, null)).diameterMm();
    }
    double budget = Gaugings.diameter(session, 12, "pin", 96.05).budget().combinedMm();
    assertEquals(96.05, mean(found), 5 * budget / Math.sqrt(DRAWS));
    assertEquals(1, deviation(found) / budget, 0.015);
  }

  @Test
  void differencesScatterAsTheirBudgetSays() {
    Random random = new Random(20_25);
    BoreGauging session = session();
    double[] found = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      World world = World.draw(random);
      // The error of the displacement between both readings shows in one of them.
      double upper = world.reading(random, 96.05, true);
      double lower = world.reading(random, 96.02, false);
      found[i] =
          session.diameter(new BoreReading(12, "pin", 500, upper, null)).diameterMm()
              - session.diameter(new BoreReading(60, "pin", 500, lower, null)).diameterMm();
    }
    double budget =
        Gaugings.diameter(session, 12, "pin", 96.05)
            .minus(Gaugings.diameter(session, 60, "pin", 96.02))
            .standardUncertaintyMm();
    assertEquals(0.03, mean(found), 5 * budget / Math.sqrt(DRAWS));
    assertEquals(1, deviation(found) / budget, 0.015);
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  private static double deviation(double[] values) {
    double mean = mean(values);
    double sum = 0;
    for (double value : values) {
      sum += (value - mean) * (value - mean);
    }
    return Math.sqrt(sum / (values.length - 1));
  }
}
