package boreledger.calc.rock;

/**
 * Quintic B-splines on evenly spaced knots, with their values at the samples' times kept.
 *
 * <p>Six of them differ from zero at any time; coefficient {@code start(i) + j} belongs to value
 * {@code j} of sample {@code i}.
 */
final class SplineBasis {
  static final int SUPPORT = 6;
  private static final int DEGREE = SUPPORT - 1;

  private final double originS;
  private final double spacingS;
  private final int size;
  private final int[] start;
  private final double[][] value;
  private final double[][] slopePerS;

  /**
   * @param tS ascending times in seconds; at least one
   * @param spacingS distance of the knots in seconds
   */
  SplineBasis(double[] tS, double spacingS) {
    this.originS = tS[0];
    this.spacingS = spacingS;
    int spans = 1 + (int) ((tS[tS.length - 1] - originS) / spacingS);
    size = spans + DEGREE;
    start = new int[tS.length];
    value = new double[tS.length][];
    slopePerS = new double[tS.length][];
    for (int i = 0; i < tS.length; i++) {
      start[i] = span(tS[i]);
      double fraction = (tS[i] - originS) / spacingS - start[i];
      value[i] = cardinal(fraction, DEGREE);
      slopePerS[i] = differences(cardinal(fraction, DEGREE - 1), spacingS);
    }
  }

  private int span(double tS) {
    return Math.max(0, Math.min(size - SUPPORT, (int) ((tS - originS) / spacingS)));
  }

  /** Values of the B-splines of one degree on unit knots, by the recursion of Cox and de Boor. */
  private static double[] cardinal(double u, int degree) {
    double[] n = new double[degree + 1];
    n[0] = 1;
    for (int j = 1; j <= degree; j++) {
      double saved = 0;
      for (int r = 0; r < j; r++) {
        double share = n[r] / j;
        n[r] = saved + (r + 1 - u) * share;
        saved = (u + j - 1 - r) * share;
      }
      n[j] = saved;
    }
    return n;
  }

  /** The slope of a B-spline is the difference of two of the next lower degree. */
  private static double[] differences(double[] lower, double spacingS) {
    double[] slope = new double[lower.length + 1];
    for (int j = 0; j < lower.length; j++) {
      slope[j] -= lower[j] / spacingS;
      slope[j + 1] += lower[j] / spacingS;
    }
    return slope;
  }

  int size() {
    return size;
  }

  double spacingS() {
    return spacingS;
  }

  int start(int i) {
    return start[i];
  }

  double[] values(int i) {
    return value[i];
  }

  /** The curve's value at sample {@code i}. */
  double at(int i, double[] coefficients) {
    return dot(value[i], start[i], coefficients);
  }

  /** The curve's slope per second at sample {@code i}. */
  double slopeAt(int i, double[] coefficients) {
    return dot(slopePerS[i], start[i], coefficients);
  }

  /** The curve's value at any time of the record. */
  double valueAt(double tS, double[] coefficients) {
    int first = span(tS);
    double[] row = cardinal((tS - originS) / spacingS - first, DEGREE);
    return dot(row, first, coefficients);
  }

  private static double dot(double[] row, int start, double[] coefficients) {
    double sum = 0;
    for (int j = 0; j < SUPPORT; j++) {
      sum += row[j] * coefficients[start + j];
    }
    return sum;
  }
}
