package boreledger.calc.rock;

import static boreledger.calc.rock.Hand.between;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A simulated record of a two-point gauge rocked in a bore of known size.
 *
 * <p>It knows the law of the gauge by its angle, not by the root that the estimator works with:
 * {@code (D − 2ρ)/cos θ + 2ρ}, read as a deviation from the nominal bore, with noise, glitches and
 * the digit step on top.
 */
record RockingRecord(double truthMm, List<RockSample> samples) {
  private static final double DURATION_S = 12;
  private static final double NOISE_MM = 0.0007;
  private static final double GLITCH_CHANCE = 0.01;
  private static final double GLITCH_MM = 0.3;
  private static final double STEP_MM = 0.001;

  static RockingRecord of(long seed, Hand hand, Ends ends, double samplesPerS) {
    Random random = new Random(seed);
    double boreMm = between(random, 60, 140);
    double anvilMm = between(random, 1, 5);
    double offsetDeg = between(random, -1.5, 1.5);
    double truthMm = between(random, -0.02, 0.15);
    double[] tS = unevenTimes(random, samplesPerS);
    double[] tiltDeg = hand.tiltDeg(tS, random);
    Ends.Course course = new Ends.Course(random, DURATION_S);
    List<RockSample> samples = new ArrayList<>();
    for (int i = 0; i < tS.length; i++) {
      double cos = Math.cos(Math.toRadians(offsetDeg + tiltDeg[i]));
      double insideMm = (boreMm + truthMm - 2 * anvilMm) * (1 / cos - 1) + truthMm;
      double valueMm = ends.valueMm(tS[i], insideMm, course) + NOISE_MM * random.nextGaussian();
      if (random.nextDouble() < GLITCH_CHANCE) {
        valueMm += between(random, -GLITCH_MM, GLITCH_MM);
      }
      samples.add(new RockSample(tS[i], Math.rint(valueMm / STEP_MM) * STEP_MM));
    }
    return new RockingRecord(truthMm, samples);
  }

  private static double[] unevenTimes(Random random, double samplesPerS) {
    List<Double> times = new ArrayList<>();
    double now = random.nextDouble() / samplesPerS;
    while (now < DURATION_S) {
      times.add(now);
      boolean lost = random.nextDouble() < 0.005;
      now += (lost ? 2 : 1) * between(random, 0.7, 1.3) / samplesPerS;
    }
    return times.stream().mapToDouble(Double::doubleValue).toArray();
  }

  double runningMinimumErrorMm() {
    double least = samples.stream().mapToDouble(RockSample::valueMm).min().orElseThrow();
    return Math.abs(least - truthMm);
  }
}
