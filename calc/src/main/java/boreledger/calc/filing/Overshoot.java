package boreledger.calc.filing;

import boreledger.calc.uncertainty.StudentT;

/**
 * The chance that turns to come pass a limit, by Student's t with the rate's degrees of freedom.
 *
 * <p>Variance of the gap after n turns: the gap's own, n^2 times that of the mean rate and of the
 * stray of a pass from it, and 2 n times the covariance of both, as a last reading that is too
 * narrow makes the rate too small as well.
 *
 * @param gapMm the gap now
 * @param gapUncertaintyMm its standard uncertainty; above zero
 * @param readingUncertaintyMm that of a single reading
 * @param rate what a turn takes off
 * @param limitMm the gap not to be passed
 */
record Overshoot(
    double gapMm,
    double gapUncertaintyMm,
    double readingUncertaintyMm,
    RemovalRate rate,
    double limitMm) {

  double expectedGapMm(int turns) {
    return gapMm + rate.perTurnMm() * turns;
  }

  double chance(int turns) {
    double n = turns;
    double perTurnMm2 =
        rate.standardUncertaintyMm() * rate.standardUncertaintyMm()
            + rate.passToPassMm() * rate.passToPassMm();
    // Both are wrong by the same reading, but a gap known better than that shares only its own.
    double sharedMm2 = readingUncertaintyMm * Math.min(readingUncertaintyMm, gapUncertaintyMm);
    double varianceMm2 =
        gapUncertaintyMm * gapUncertaintyMm
            + n * n * perTurnMm2
            + 2 * n * rate.lastReadingShare() * sharedMm2;
    double beyond = (expectedGapMm(turns) - limitMm) / Math.sqrt(varianceMm2);
    return StudentT.cumulative(beyond, rate.degreesOfFreedom());
  }

  /**
   * The most turns whose chance stays below a bound under one half; 0 when even one is too much.
   * The chance grows with the turns, and is one half where the limit is expected to be reached.
   */
  int mostTurns(double bound) {
    int enough = 0;
    int tooMany = (int) Math.min(1e9, Math.max(0, (limitMm - gapMm) / rate.perTurnMm())) + 1;
    while (tooMany - enough > 1) {
      int middle = enough + (tooMany - enough) / 2;
      if (chance(middle) < bound) {
        enough = middle;
      } else {
        tooMany = middle;
      }
    }
    return enough;
  }
}
