package boreledger.calc.rock;

import java.util.Arrays;
import java.util.List;

/**
 * The samples of one record as columns: finite values, times strictly ascending.
 *
 * @param tS times in seconds
 * @param yMm values in millimetres
 */
record RockTrace(double[] tS, double[] yMm) {

  /**
   * Takes over what can be used; a sample that is not finite or not later than the last is left.
   */
  static RockTrace of(List<RockSample> samples) {
    double[] t = new double[samples.size()];
    double[] y = new double[samples.size()];
    int n = 0;
    for (RockSample sample : samples) {
      boolean finite = Double.isFinite(sample.tS()) && Double.isFinite(sample.valueMm());
      if (finite && (n == 0 || sample.tS() > t[n - 1])) {
        t[n] = sample.tS();
        y[n++] = sample.valueMm();
      }
    }
    return new RockTrace(Arrays.copyOf(t, n), Arrays.copyOf(y, n));
  }

  int size() {
    return tS.length;
  }

  double durationS() {
    return tS[tS.length - 1] - tS[0];
  }

  /** The middle of the times between neighbouring samples, in seconds; at least two samples. */
  double medianGapS() {
    double[] gap = new double[tS.length - 1];
    for (int i = 0; i < gap.length; i++) {
      gap[i] = tS[i + 1] - tS[i];
    }
    Arrays.sort(gap);
    return gap[gap.length / 2];
  }

  /** Keeps samples that are at least {@code spacingS} apart. */
  RockTrace thinned(double spacingS) {
    double[] t = new double[size()];
    double[] y = new double[size()];
    int n = 0;
    for (int i = 0; i < size(); i++) {
      if (n == 0 || tS[i] >= t[n - 1] + spacingS) {
        t[n] = tS[i];
        y[n++] = yMm[i];
      }
    }
    return new RockTrace(Arrays.copyOf(t, n), Arrays.copyOf(y, n));
  }

  /** Values not above either neighbour, ascending. */
  double[] localMinimaMm() {
    double[] minima = new double[size()];
    int n = 0;
    for (int i = 1; i + 1 < size(); i++) {
      if (yMm[i] <= yMm[i - 1] && yMm[i] <= yMm[i + 1]) {
        minima[n++] = yMm[i];
      }
    }
    double[] found = Arrays.copyOf(minima, n);
    Arrays.sort(found);
    return found;
  }
}
