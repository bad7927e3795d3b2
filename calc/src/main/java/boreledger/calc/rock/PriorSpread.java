package boreledger.calc.rock;

/**
 * Carries into the diameter's variance that the stiffness itself is only estimated.
 *
 * <p>Stiffnesses around the likeliest one are tried; their variances, and how far their diameters
 * lie from the likeliest, are averaged with their likelihoods as weights.
 */
final class PriorSpread {
  private static final int REACH = 2;
  private static final int STEPS = 4;

  private PriorSpread() {}

  /** Variance of the fit's diameter in square millimetres. */
  static double variance(TiltFit fit, double leastNoiseVariance) {
    double weights = 0;
    double sum = 0;
    for (int k = -REACH; k <= REACH; k++) {
      TiltPrior prior = fit.prior().withStiffness(fit.prior().stiffness() * Math.exp(k));
      TiltFit other = k == 0 ? fit : TiltSolver.fit(fit, fit.problem(), prior, STEPS);
      if (other != null) {
        double weight = Math.exp((fit.criterion() - other.criterion()) / 2);
        double noise = Math.max(other.noiseVariance(), leastNoiseVariance);
        double offMm = other.diameterMm() - fit.diameterMm();
        sum += weight * (noise * other.diameterVarianceShare() + offMm * offMm);
        weights += weight;
      }
    }
    return sum / weights;
  }
}
