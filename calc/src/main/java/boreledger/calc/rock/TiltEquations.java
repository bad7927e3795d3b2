package boreledger.calc.rock;

/**
 * Normal equations of the spline's coefficients, bordered by one diameter or by several, each for
 * its own stretch of the record.
 */
final class TiltEquations {
  private static final int WIDTH = SplineBasis.SUPPORT - 1;
  private static final int STRIDE = WIDTH + 1;

  /** Keeps the matrix positive definite where a record leaves a coefficient free. */
  private static final double RIDGE = 1e-11;

  private final SplineBasis basis;
  private final double[] band;
  private final double[] right;
  private final double[][] border;
  private final double[] corner;
  private final double[] cornerRight;

  TiltEquations(SplineBasis basis, int diameters) {
    this.basis = basis;
    band = new double[basis.size() * STRIDE];
    right = new double[basis.size()];
    border = new double[diameters][basis.size()];
    corner = new double[diameters];
    cornerRight = new double[diameters];
  }

  /** Adds {@code weight·(target − D[k] − factor·spline(i))²}. */
  void add(int i, double weight, double factor, int k, double target) {
    add(i, weight, factor, target);
    for (int j = 0; j < STRIDE; j++) {
      border[k][basis.start(i) + j] += weight * factor * basis.values(i)[j];
    }
    corner[k] += weight;
    cornerRight[k] += weight * target;
  }

  /** Adds {@code weight·(target − factor·spline(i))²}. */
  void add(int i, double weight, double factor, double target) {
    double[] value = basis.values(i);
    int start = basis.start(i);
    for (int j = 0; j < STRIDE; j++) {
      double part = weight * factor * value[j];
      right[start + j] += part * target;
      int row = (start + j) * STRIDE + j;
      for (int k = 0; k <= j; k++) {
        band[row - k] += part * factor * value[k];
      }
    }
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

  /** Coefficients and diameters; null when the equations are singular. */
  TiltSolution solve() {
    BandCholesky factor = BandCholesky.of(basis.size(), WIDTH, band);
    if (factor == null) {
      return null;
    }
    int count = corner.length;
    double[][] perDiameter = new double[count][];
    for (int k = 0; k < count; k++) {
      perDiameter[k] = factor.solve(border[k]);
    }
    double[] c = factor.solve(right);
    double[] rest = new double[count];
    double[] schur = new double[count * count];
    for (int k = 0; k < count; k++) {
      rest[k] = cornerRight[k] - dot(border[k], c);
      for (int l = 0; l <= k; l++) {
        schur[k * count + k - l] = (k == l ? corner[k] : 0) - dot(border[k], perDiameter[l]);
      }
    }
    BandCholesky diameterFactor = BandCholesky.of(count, count - 1, schur);
    if (diameterFactor == null) {
      return null;
    }
    double[] diameterMm = diameterFactor.solve(rest);
    for (int k = 0; k < count; k++) {
      for (int i = 0; i < c.length; i++) {
        c[i] -= diameterMm[k] * perDiameter[k][i];
      }
    }
    return new TiltSolution(c, diameterMm, factor, perDiameter, diameterFactor);
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
