package boreledger.calc.filing;

import java.util.List;

/**
 * Generalised least squares through the origin, removal = b n + error, for one spread of rates
 * (Aitken 1935; Draper and Smith, Applied Regression Analysis).
 *
 * @param slopeMm b
 * @param slopeVarianceMm2 the variance of b
 * @param lastWeight how much b grows with what the last pass took off
 */
record RateFit(double slopeMm, double slopeVarianceMm2, double lastWeight) {

  static RateFit of(List<FilingPass> passes, double readingVarianceMm2, double rateVarianceMm2) {
    PassCovariance covariance = new PassCovariance(passes, readingVarianceMm2, rateVarianceMm2);
    double[] turns = passes.stream().mapToDouble(FilingPass::turns).toArray();
    double[] removed = passes.stream().mapToDouble(FilingPass::removedMm).toArray();
    double[] weights = covariance.solve(turns);
    double variance = 1 / dot(turns, weights);
    double slope = variance * dot(removed, weights);
    return new RateFit(slope, variance, variance * weights[weights.length - 1]);
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
