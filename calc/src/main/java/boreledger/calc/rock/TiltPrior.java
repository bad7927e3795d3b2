package boreledger.calc.rock;

/**
 * What is held about the hand and the clock before a fit.
 *
 * <p>The signed root {@code q} of "reading above the diameter" is nearly proportional to the tilt.
 * A hand that rocks evenly about an offset gives a harmonic plus a straight line; what departs from
 * that is penalised, and the stiffness says how dear it is.
 *
 * @param stiffness noise variance over the variance of the departure in one knot spacing
 * @param rockRadPerS angular frequency of the rocking in radians per second
 * @param jitterSPerMm standard deviation of a sample's time over that of its value
 */
record TiltPrior(double stiffness, double rockRadPerS, double jitterSPerMm) {

  /** Taps that turn every harmonic of this frequency and every straight line into zero. */
  double[] taps(double spacingS) {
    double cos = Math.cos(rockRadPerS * spacingS);
    return new double[] {1, -2 * cos - 2, 2 + 4 * cos, -2 * cos - 2, 1};
  }

  TiltPrior withStiffness(double value) {
    return new TiltPrior(value, rockRadPerS, jitterSPerMm);
  }
}
