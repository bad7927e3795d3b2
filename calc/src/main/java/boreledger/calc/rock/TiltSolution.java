package boreledger.calc.rock;

import java.util.Arrays;

/**
 * Solved normal equations.
 *
 * @param coefficients of the spline
 * @param diameterMm one diameter, or one for each stretch
 * @param factor of the coefficients' own block
 * @param perDiameter how far the coefficients give way per millimetre of a diameter, negated
 * @param diameterFactor of what is known about the diameters once the coefficients are free
 */
record TiltSolution(
    double[] coefficients,
    double[] diameterMm,
    BandCholesky factor,
    double[][] perDiameter,
    BandCholesky diameterFactor) {

  double logDeterminant() {
    return factor.logDeterminant() + diameterFactor.logDeterminant();
  }

  /** Variance of diameter {@code k} in units of the noise variance. */
  double diameterVariance(int k) {
    double[] unit = new double[diameterMm.length];
    unit[k] = 1;
    return diameterFactor.solve(unit)[k];
  }

  /** The part of each diameter in their common value; the parts add up to one. */
  double[] diameterWeights() {
    double[] ones = new double[diameterMm.length];
    Arrays.fill(ones, 1);
    double[] weight = diameterFactor.times(ones);
    double total = 0;
    for (int k = 0; k < weight.length; k++) {
      total += weight[k];
    }
    for (int k = 0; k < weight.length; k++) {
      weight[k] /= total;
    }
    return weight;
  }

  /** Variance of {@code D + factorOfSpline·spline(i)} in units of the noise variance. */
  double variance(SplineBasis basis, int i, double factorOfSpline) {
    double[] row = new double[basis.size()];
    double along = 1 - factorOfSpline * basis.at(i, perDiameter[0]);
    int start = basis.start(i);
    for (int j = 0; j < SplineBasis.SUPPORT; j++) {
      row[start + j] = factorOfSpline * basis.values(i)[j];
    }
    factor.forward(row, start);
    double sum = along * along * diameterVariance(0);
    for (int j = start; j < row.length; j++) {
      sum += row[j] * row[j];
    }
    return sum;
  }
}
