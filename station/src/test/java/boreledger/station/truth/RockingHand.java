package boreledger.station.truth;

/**
 * A hand that rocks the gauge: a tilt that swings to and fro, never quite the same way twice.
 *
 * <p>A two-point gauge with anvil radius ρ, tilted by θ, meets the walls as two circles of radius ρ
 * whose centres are (D − 2ρ)/cos θ apart; with its anvils it spans 2ρ more.
 */
final class RockingHand {
  private static final double ANVIL_RADIUS_MM = 1.5;

  private final double swingDeg;
  private final double periodS;
  private final double offCentreDeg;
  private final double startTurns;
  private final double unsteadiness;

  RockingHand(Noise noise) {
    swingDeg = noise.between(4.5, 7.5);
    periodS = noise.between(1.25, 1.95);
    offCentreDeg = noise.between(-0.5, 0.5);
    startTurns = noise.between(0.0, 1.0);
    unsteadiness = noise.between(-0.06, 0.06);
  }

  /** By how much the tilted gauge spans more than the diameter, s seconds after it began. */
  double excessMm(double diameterMm, double s) {
    double turns = startTurns + s / periodS + unsteadiness * StrictMath.sin(s);
    double swing = swingDeg * (1 + unsteadiness * StrictMath.cos(0.7 * s));
    double tiltDeg = offCentreDeg + swing * StrictMath.sin(2 * StrictMath.PI * turns);
    double cos = StrictMath.cos(StrictMath.toRadians(tiltDeg));
    return (diameterMm - 2 * ANVIL_RADIUS_MM) * (1 / cos - 1);
  }
}
