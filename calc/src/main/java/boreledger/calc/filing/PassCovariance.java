package boreledger.calc.filing;

import java.util.List;

/**
 * The covariance of what passes took off: tridiagonal, as only neighbours share a reading.
 *
 * <ul>
 *   <li>Diagonal: 2 u^2 for two readings plus (s n)^2, as the rate of a pass strays by s from the
 *       mean rate (pressure, pace, how the ring is held).
 *   <li>Neighbours that share a reading: -u^2. A gap that was read anew in between shares none.
 * </ul>
 */
final class PassCovariance {
  private final double[] diagonal;
  private final double[] beside;

  /**
   * The covariance for one spread of rates.
   *
   * @param readingVarianceMm2 u^2; above zero
   * @param rateVarianceMm2 s^2; zero or more
   */
  PassCovariance(List<FilingPass> passes, double readingVarianceMm2, double rateVarianceMm2) {
    int count = passes.size();
    diagonal = new double[count];
    beside = new double[count - 1];
    for (int i = 0; i < count; i++) {
      double turns = passes.get(i).turns();
      diagonal[i] = 2 * readingVarianceMm2 + rateVarianceMm2 * turns * turns;
      if (i > 0 && passes.get(i - 1).sharesReadingWith(passes.get(i))) {
        beside[i - 1] = -readingVarianceMm2;
      }
    }
  }

  /** The vector that this matrix turns into the one given, by elimination down and back. */
  double[] solve(double[] right) {
    int count = diagonal.length;
    double[] pivot = diagonal.clone();
    double[] solution = right.clone();
    for (int i = 1; i < count; i++) {
      double factor = beside[i - 1] / pivot[i - 1];
      pivot[i] -= factor * beside[i - 1];
      solution[i] -= factor * solution[i - 1];
    }
    for (int i = count - 1; i >= 0; i--) {
      double later = i == count - 1 ? 0 : beside[i] * solution[i + 1];
      solution[i] = (solution[i] - later) / pivot[i];
    }
    return solution;
  }
}
