package boreledger.drivers.practice;

import java.util.Random;

/**
 * A two-point gauge with round anvils that shows how far it is from the size it was set on, held by
 * a warm hand.
 *
 * <p>Tilted by θ about its shoe, which stands a little above the anvils, it meets the walls a
 * little deeper or higher, and not quite on the diameter. Its anvils are two spheres of radius ρ
 * that touch walls D apart, so their centres are (D − 2ρ)/cos θ apart and it spans 2ρ more. What it
 * shows runs after what it spans by a bit of friction; its zero creeps as the hand warms it; its
 * noise is partly slow; and now and then a value is spoilt altogether.
 */
final class PracticeGauge {
  /** What it shows in free air, where the anvils rest on their stop, in millimetres. */
  static final double STOP_MM = 2.8;

  private static final double ANVIL_RADIUS_MM = 1.6;
  private static final double SHOE_ABOVE_MM = 7;
  private static final double FRICTION_MM = 0.0003;
  private static final double NOISE_MM = 0.0003;
  private static final double SLOW_NOISE_SHARE = 0.8;
  private static final double WARMING_S = 500;
  private static final double GLITCH_CHANCE = 0.002;

  private final double warmthMm;
  private double slowNoiseMm;
  private double shownMm = STOP_MM;

  /**
   * @param random decides how a hand warms it
   */
  PracticeGauge(Random random) {
    warmthMm = 0.0025 * (2 * random.nextDouble() - 1);
  }

  /**
   * What the anvils span in a bore, less the size of zero, in millimetres.
   *
   * @param offMm how far off the diameter the shoe holds it
   */
  static double spanMm(PracticeTask.Rock task, double tiltDeg, double offMm) {
    double tilt = Math.toRadians(tiltDeg);
    double thereMm = task.diameterMm() + task.slope() * SHOE_ABOVE_MM * Math.sin(tilt);
    double chordMm = Math.sqrt(thereMm * thereMm - 4 * offMm * offMm);
    double tiltedMm = (chordMm - 2 * ANVIL_RADIUS_MM) / Math.cos(tilt) + 2 * ANVIL_RADIUS_MM;
    return tiltedMm - task.zeroSizeMm();
  }

  /**
   * What it shows.
   *
   * @param spannedMm what the anvils span, less the size of zero; the stop keeps it from more than
   *     {@link #STOP_MM}
   * @param random makes the noise
   */
  double showMm(double tS, double spannedMm, Random random) {
    double reachedMm = Math.min(spannedMm, STOP_MM);
    if (reachedMm > shownMm) {
      shownMm = Math.max(shownMm, reachedMm - FRICTION_MM);
    } else {
      shownMm = Math.min(shownMm, reachedMm + FRICTION_MM);
    }
    slowNoiseMm =
        SLOW_NOISE_SHARE * slowNoiseMm + NOISE_MM * (1 - SLOW_NOISE_SHARE) * random.nextGaussian();
    return shownMm
        + warmthMm * (1 - Math.exp(-tS / WARMING_S))
        + slowNoiseMm
        + NOISE_MM * random.nextGaussian();
  }

  /** What an odd value is spoilt by, nearly always nothing, in millimetres. */
  static double glitchMm(Random random) {
    if (random.nextDouble() >= GLITCH_CHANCE) {
      return 0;
    }
    return (random.nextDouble() < 0.4 ? -1 : 1) * (0.02 + 0.28 * random.nextDouble());
  }
}
