package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RockJudgementTest {
  private static final double NOISE_MM = 0.0005;
  private static final double FINE_MM = 1e-9;

  /** An even rock in a bore that grows by {@code driftMmPerS}; too stiff to be bent by it. */
  private static RockPasses drifting(double driftMmPerS) {
    RockTrace even = TiltCase.trace(150, TiltCase::evenRock, NOISE_MM);
    double[] yMm = even.yMm().clone();
    for (int i = 0; i < yMm.length; i++) {
      yMm[i] += driftMmPerS * even.tS()[i];
    }
    TiltPrior stiff = new TiltPrior(100, TiltCase.RAD_PER_S, 0.05);
    return RockPasses.of(TiltCase.fit(new RockTrace(even.tS(), yMm), TiltCase::evenRock, stiff));
  }

  private static RockEstimate.Found found(RockPasses passes, double resolutionMm) {
    return assertInstanceOf(
        RockEstimate.Found.class, new RockJudgement(passes, resolutionMm).estimate(3));
  }

  /** By how much the variance is widened. */
  private static double widening(double driftMmPerS) {
    RockPasses passes = drifting(driftMmPerS);
    double u = found(passes, FINE_MM).standardUncertaintyMm();
    return u * u / PriorSpread.variance(passes.fit(), passes.fit().noiseVariance());
  }

  /**
   * Birge's ratio squared of n values is chi squared over n - 1, with the standard deviation root
   * of 2 / (n - 1): it is believed from two of them above one.
   */
  @Test
  void rocksThatDisagreeByMoreThanChanceWidenTheUncertainty() {
    assertEquals(1, widening(0), 1e-9);
    double calm = 0;
    double disagreeing = 0.002;
    for (int k = 0; k < 30; k++) {
      double middle = (calm + disagreeing) / 2;
      if (widening(middle) > 1 + 1e-9) {
        disagreeing = middle;
      } else {
        calm = middle;
      }
    }
    int rocks = drifting(calm).count();
    assertEquals(12, rocks);
    assertEquals(1, widening(calm), 1e-9);
    assertEquals(1 + 2 * Math.sqrt(2.0 / (rocks - 1)), widening(disagreeing), 1e-3);
  }

  /**
   * B. Widrow, statistical analysis of amplitude-quantized systems (1961): the mean of a rounded
   * value keeps of the rounding what the noise's characteristic function leaves at one digit step.
   */
  @Test
  void roundingCountsForARockAsFarAsNoiseDoesNotBlurIt() {
    RockPasses passes = drifting(0);
    double noise = passes.fit().noiseVariance();
    double fine = Math.pow(found(passes, FINE_MM).standardUncertaintyMm(), 2);
    for (double blur : new double[] {0.1, 0.2, 0.3}) {
      // Noise of this many digit steps beside the rounding's own.
      double stepMm = Math.sqrt(noise / (blur * blur + 1.0 / 12));
      double left = Math.exp(-Math.pow(2 * Math.PI * blur, 2) / 2);
      double expected = stepMm * stepMm / 12 * left * left / 12;
      double coarse = Math.pow(found(passes, stepMm).standardUncertaintyMm(), 2);
      assertEquals(expected, coarse - fine, 1e-6 * expected, "blurred by " + blur);
    }
  }

  /** Twelve rocks of like weight: each alone is root of 12 times vaguer than all together. */
  @Test
  void aRockAloneIsVaguerThanAllTogether() {
    RockEstimate.Found found = found(drifting(0), FINE_MM);
    double all = 0;
    for (RockVertex vertex : found.vertices()) {
      all += 1 / Math.pow(vertex.standardUncertaintyMm(), 2);
      assertTrue(vertex.standardUncertaintyMm() > found.standardUncertaintyMm());
    }
    assertEquals(12, found.vertices().size());
    assertEquals(1, found.standardUncertaintyMm() * Math.sqrt(all), 0.3);
  }
}
