package boreledger.calc.rock;

/**
 * Cholesky factor {@code L} of a symmetric positive definite band matrix, {@code A = L·Lᵀ}.
 *
 * <p>Element {@code (i, i - d)} of the lower band stands at {@code i·(width + 1) + d}.
 */
final class BandCholesky {
  private final int size;
  private final int width;
  private final double[] band;

  private BandCholesky(int size, int width, double[] band) {
    this.size = size;
    this.width = width;
    this.band = band;
  }

  /**
   * Factors a band matrix.
   *
   * @param band the lower band; left as it is
   * @return null when the matrix is not positive definite in double arithmetic
   */
  static BandCholesky of(int size, int width, double[] band) {
    double[] l = band.clone();
    int stride = width + 1;
    for (int i = 0; i < size; i++) {
      for (int d = Math.min(width, i); d >= 0; d--) {
        int j = i - d;
        double sum = l[i * stride + d];
        for (int k = Math.max(0, i - width); k < j; k++) {
          sum -= l[i * stride + i - k] * l[j * stride + j - k];
        }
        if (d > 0) {
          l[i * stride + d] = sum / l[j * stride];
        } else if (sum > 0) {
          l[i * stride] = Math.sqrt(sum);
        } else {
          return null;
        }
      }
    }
    return new BandCholesky(size, width, l);
  }

  /** Solves {@code A·x = right}. */
  double[] solve(double[] right) {
    double[] x = right.clone();
    forward(x, 0);
    int stride = width + 1;
    for (int i = size - 1; i >= 0; i--) {
      double sum = x[i];
      for (int k = i + 1; k <= Math.min(size - 1, i + width); k++) {
        sum -= band[k * stride + k - i] * x[k];
      }
      x[i] = sum / band[i * stride];
    }
    return x;
  }

  /** Overwrites {@code x}, whose elements before {@code from} are zero, with {@code L⁻¹·x}. */
  void forward(double[] x, int from) {
    int stride = width + 1;
    for (int i = from; i < size; i++) {
      double sum = x[i];
      for (int k = Math.max(from, i - width); k < i; k++) {
        sum -= band[i * stride + i - k] * x[k];
      }
      x[i] = sum / band[i * stride];
    }
  }

  /** {@code A·x}. */
  double[] times(double[] x) {
    double[] half = transposedTimes(x);
    double[] product = new double[size];
    for (int i = 0; i < size; i++) {
      for (int j = Math.max(0, i - width); j <= i; j++) {
        product[i] += band[i * (width + 1) + i - j] * half[j];
      }
    }
    return product;
  }

  /** {@code xᵀ·A·x}, as the squared length of {@code Lᵀ·x}. */
  double quadraticForm(double[] x) {
    double sum = 0;
    for (double half : transposedTimes(x)) {
      sum += half * half;
    }
    return sum;
  }

  private double[] transposedTimes(double[] x) {
    double[] product = new double[size];
    for (int i = 0; i < size; i++) {
      for (int j = Math.max(0, i - width); j <= i; j++) {
        product[j] += band[i * (width + 1) + i - j] * x[i];
      }
    }
    return product;
  }

  /** Natural logarithm of the determinant of {@code A}. */
  double logDeterminant() {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      sum += Math.log(band[i * (width + 1)]);
    }
    return 2 * sum;
  }
}
