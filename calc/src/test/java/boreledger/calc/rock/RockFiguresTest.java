package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * Simulated readings of 12 s in bores of known size: digit step 1 um, noise 0.7 um, one glitch in a
 * hundred samples, hands from smooth to stuttering, with and without the ways in and out. The truth
 * is known by construction; the seeds are 7000 upward.
 */
class RockFiguresTest {
  private static final int READINGS = 500;
  private static final long FIRST_SEED = 7000;

  @Test
  void tenSamplesPerSecondAreWithinAMicrometreAndCovered() {
    RockFigures figures = RockFigures.of(10, READINGS, FIRST_SEED);
    assertTrue(figures.outcomes().size() >= 0.98 * READINGS, figures::toString);
    assertTrue(figures.error95Mm() <= 0.0010, figures::toString);
    assertCovered(figures);
    assertTrue(figures.runningMinimumError95Mm() > 10 * figures.error95Mm(), figures::toString);
  }

  @Test
  void fiftySamplesPerSecondAreWithinLessThanHalfAMicrometreAndCovered() {
    RockFigures figures = RockFigures.of(50, READINGS, FIRST_SEED);
    assertTrue(figures.outcomes().size() >= 0.98 * READINGS, figures::toString);
    assertTrue(figures.error95Mm() <= 0.0004, figures::toString);
    assertCovered(figures);
    assertTrue(figures.runningMinimumError95Mm() > 10 * figures.error95Mm(), figures::toString);
  }

  @Test
  void fiveSamplesPerSecondMayGiveNothingButAreNotWrongAndSure() {
    RockFigures figures = RockFigures.of(5, READINGS, FIRST_SEED);
    assertTrue(figures.outcomes().size() > READINGS / 20, figures::toString);
    assertTrue(figures.coveredPart() >= 0.90, figures::toString);
    assertTrue(figures.worstRatio() < 5, figures::toString);
  }

  private static void assertCovered(RockFigures figures) {
    double part = figures.coveredPart();
    assertTrue(part >= 0.92 && part <= 0.98, figures::toString);
  }
}
