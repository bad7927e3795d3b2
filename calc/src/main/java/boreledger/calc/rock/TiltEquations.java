package boreledger.calc.rock;

/** Normal equations of the spline's coefficients, bordered by the one diameter. */
final class TiltEquations {
  private static final int WIDTH = SplineBasis.SUPPORT - 1;
  private static final int STRIDE = WIDTH + 1;

  /** Keeps the matrix positive definite where a record leaves a coefficient free. */
  private static final double RIDGE = 1e-11;

  private final SplineBasis basis;
  private final double[] band;
  private final double[] right;
  private final double[] border;
  private double corner;
  private double cornerRight;

  TiltEquations(SplineBasis basis) {
    this.basis = basis;
    band = new double[basis.size() * STRIDE];
    right = new double[basis.size()];
    border = new double[basis.size()];
  }

  /** Adds {@code weight·(target − onDiameter·D − factor·spline(i))²}. */
  void add(int i, double weight, double factor, double onDiameter, double target) {
    double[] value = basis.values(i);
    int start = basis.start(i);
    for (int j = 0; j < STRIDE; j++) {
      double part = weight * factor * value[j];
      right[start + j] += part * target;
      border[start + j] += part * onDiameter;
      int row = (start + j) * STRIDE + j;
      for (int k = 0; k <= j; k++) {
        band[row - k] += part * factor * value[k];
      }
    }
    corner += weight * onDiameter * onDiameter;
    cornerRight += weight * onDiameter * target;
  }

  void addPenalty(TiltPrior prior) {
    double[] tap = prior.taps(basis.spacingS());
    for (int i = 0; i + tap.length <= basis.size(); i++) {
      for (int j = 0; j < tap.length; j++) {
        for (int k = 0; k <= j; k++) {
          band[(i + j) * STRIDE + j - k] += prior.stiffness() * tap[j] * tap[k];
        }
      }
    }
    double largest = 0;
    for (int i = 0; i < basis.size(); i++) {
      largest = Math.max(largest, band[i * STRIDE]);
    }
    for (int i = 0; i < basis.size(); i++) {
      band[i * STRIDE] += RIDGE * largest;
    }
  }

  /** Coefficients with the diameter left out; null when the equations are singular. */
  double[] solveCoefficients() {
    BandCholesky factor = BandCholesky.of(basis.size(), WIDTH, band);
    return factor == null ? null : factor.solve(right);
  }

  /** Coefficients and diameter; null when the equations are singular. */
  Solution solve() {
    BandCholesky factor = BandCholesky.of(basis.size(), WIDTH, band);
    if (factor == null) {
      return null;
    }
    double[] perDiameter = factor.solve(border);
    double[] c = factor.solve(right);
    double schur = corner;
    double rest = cornerRight;
    for (int i = 0; i < c.length; i++) {
      schur -= border[i] * perDiameter[i];
      rest -= border[i] * c[i];
    }
    if (!(schur > 0)) {
      return null;
    }
    double diameterMm = rest / schur;
    for (int i = 0; i < c.length; i++) {
      c[i] -= diameterMm * perDiameter[i];
    }
    return new Solution(c, diameterMm, factor, perDiameter, schur);
  }

  /**
   * @param coefficients of the spline
   * @param diameterMm the diameter
   * @param factor of the coefficients' own block
   * @param perDiameter how far the coefficients give way per millimetre of diameter, negated
   * @param schur information on the diameter once the coefficients are free
   */
  record Solution(
      double[] coefficients,
      double diameterMm,
      BandCholesky factor,
      double[] perDiameter,
      double schur) {

    double logDeterminant() {
      return factor.logDeterminant() + Math.log(schur);
    }

    /** Variance of {@code D + factor·spline(i)} in units of the noise variance. */
    double variance(SplineBasis basis, int i, double factorOfSpline) {
      double[] row = new double[basis.size()];
      double one = 1 - factorOfSpline * basis.at(i, perDiameter);
      int start = basis.start(i);
      for (int j = 0; j < STRIDE; j++) {
        row[start + j] = factorOfSpline * basis.values(i)[j];
      }
      factor.forward(row, start);
      double sum = one * one / schur;
      for (int j = start; j < row.length; j++) {
        sum += row[j] * row[j];
      }
      return sum;
    }
  }
}
