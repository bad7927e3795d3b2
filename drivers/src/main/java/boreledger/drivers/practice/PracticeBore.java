package boreledger.drivers.practice;

import java.util.Random;

/**
 * A used bore at 20 °C: a hump of wear below the deck, a taper, and an oval that is strongest where
 * the wear is and not quite square to the thrust axis. Depths are below the deck, directions from
 * the thrust axis.
 *
 * @param baseMm the diameter far down, where nothing wore
 * @param wearMm by how much the hump is wider
 * @param wearDepthMm where the hump is highest
 * @param wearReachMm how far down it reaches: there it is 1/e of its height
 * @param taper narrower per millimetre deeper, in millimetres per millimetre
 * @param ovalMm largest less smallest diameter in the hump; a quarter of it elsewhere
 * @param towardsDeg where the largest diameter points
 */
public record PracticeBore(
    double baseMm,
    double wearMm,
    double wearDepthMm,
    double wearReachMm,
    double taper,
    double ovalMm,
    double towardsDeg) {
  private static final int PERIMETER_STEPS = 720;
  private static final double SLOPE_STEP_MM = 0.5;

  /**
   * A bore with a life behind it.
   *
   * @param lowMm the smallest diameter a new bore may have
   * @param highMm the largest diameter a new bore may have
   */
  public static PracticeBore worn(Random random, double lowMm, double highMm, double strokeMm) {
    return new PracticeBore(
        lowMm + (0.2 + 0.5 * random.nextDouble()) * (highMm - lowMm),
        0.005 + 0.035 * random.nextDouble(),
        (0.08 + 0.06 * random.nextDouble()) * strokeMm,
        (0.3 + 0.3 * random.nextDouble()) * strokeMm,
        0.008 * random.nextDouble() / strokeMm,
        0.003 + 0.017 * random.nextDouble(),
        10 * random.nextGaussian());
  }

  /** The diameter that a two-point gauge meets. */
  public double diameterMm(double depthMm, double directionDeg) {
    double hump = hump(depthMm);
    double oval = ovalMm / 2 * (0.25 + 0.75 * hump);
    return baseMm
        + wearMm * hump
        - taper * depthMm
        + oval * Math.cos(2 * Math.toRadians(directionDeg - towardsDeg));
  }

  /** How much wider it is per millimetre deeper, in millimetres per millimetre. */
  public double slope(double depthMm, double directionDeg) {
    double above = diameterMm(depthMm - SLOPE_STEP_MM, directionDeg);
    double below = diameterMm(depthMm + SLOPE_STEP_MM, directionDeg);
    return (below - above) / (2 * SLOPE_STEP_MM);
  }

  /** The length of the wall around, as a polygon of many sides with its corners on the wall. */
  public double perimeterMm(double depthMm) {
    double aroundMm = 0;
    double beforeDeg = 0;
    for (int step = 1; step <= PERIMETER_STEPS; step++) {
      double deg = 360.0 * step / PERIMETER_STEPS;
      aroundMm += chordMm(depthMm, beforeDeg, deg);
      beforeDeg = deg;
    }
    return aroundMm / chordShare();
  }

  private double chordMm(double depthMm, double fromDeg, double toDeg) {
    double fromMm = diameterMm(depthMm, fromDeg) / 2;
    double toMm = diameterMm(depthMm, toDeg) / 2;
    double cos = Math.cos(Math.toRadians(toDeg - fromDeg));
    return Math.sqrt(fromMm * fromMm + toMm * toMm - 2 * fromMm * toMm * cos);
  }

  /** How much of a circle the polygon's sides have. */
  private static double chordShare() {
    double half = Math.PI / PERIMETER_STEPS;
    return Math.sin(half) / half;
  }

  private double hump(double depthMm) {
    double away = (depthMm - wearDepthMm) / wearReachMm;
    return Math.exp(-away * away);
  }
}
