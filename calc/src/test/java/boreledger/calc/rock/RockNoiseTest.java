package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Records of 12 s in which the gauge was never rocked: whatever the noise looks like, there is no
 * vertex in it, and a value, which would claim to be sure to 0.002 mm, must not come out.
 */
class RockNoiseTest {
  private static final int SEEDS = 10;
  private static final double STEP_MM = 0.001;
  private static final double DURATION_S = 12;

  /**
   * A gauge held as still as a hand can.
   *
   * @param memory 0 for noise that forgets at once, near 1 for a hand that wanders
   */
  private static List<RockSample> held(Random random, double rate, double noiseMm, double memory) {
    double restMm = 0.05;
    double own = Math.sqrt(1 - memory * memory);
    double offMm = noiseMm * random.nextGaussian();
    List<RockSample> samples = new ArrayList<>();
    for (int i = 0; i < DURATION_S * rate; i++) {
      offMm = memory * offMm + own * noiseMm * random.nextGaussian();
      samples.add(new RockSample(i / rate, Math.rint((restMm + offMm) / STEP_MM) * STEP_MM));
    }
    return samples;
  }

  @ParameterizedTest
  @CsvSource({
    "10, 0.0003, 0",
    "10, 0.001, 0",
    "10, 0.003, 0",
    "10, 0.01, 0",
    "10, 0.1, 0",
    "10, 0.5, 0",
    "10, 0.003, 0.9",
    "10, 0.01, 0.9",
    "10, 0.1, 0.9",
    "10, 0.1, 0.99",
    "5, 0.01, 0",
    "5, 0.1, 0.9",
    "25, 0.003, 0",
    "25, 0.01, 0.9"
  })
  void noiseAloneGivesNoValue(double rate, double noiseMm, double memory) {
    int tried = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      List<RockSample> samples = held(new Random(seed), rate, noiseMm, memory);
      RockEstimate estimate = RockEstimator.estimate(samples, STEP_MM, 4);
      assertInstanceOf(RockEstimate.NotEnough.class, estimate, "seed " + seed + ": " + estimate);
      tried++;
    }
    assertEquals(SEEDS, tried);
  }
}
