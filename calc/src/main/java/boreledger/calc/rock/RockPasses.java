package boreledger.calc.rock;

import java.util.ArrayList;
import java.util.List;

/**
 * The passes through square that a fit shows, each with the stretch of samples around it.
 *
 * @param fit the fit
 * @param timesS when the root changes its sign from one lobe to the next, in seconds, ascending
 */
record RockPasses(TiltFit fit, List<Double> timesS) {
  /** A lobe lower than this many standard deviations of a value may be noise alone. */
  private static final double LOBE = 8;

  /** How far outside the first and last passes samples are kept, in swings. */
  private static final double OUTSIDE = 0.6;

  private static final int BISECTIONS = 30;

  static RockPasses of(TiltFit fit) {
    List<Double> times = new ArrayList<>();
    double[] tS = fit.problem().trace().tS();
    double lobeRoot = Math.sqrt(LOBE * Math.sqrt(fit.noiseVariance()));
    int lobe = -1;
    for (int i = 0; i < tS.length; i++) {
      if (fit.problem().used()[i] && Math.abs(fit.root(i)) >= lobeRoot) {
        if (lobe >= 0 && fit.root(lobe) < 0 != fit.root(i) < 0) {
          times.add(zero(fit, tS[lobe], tS[i]));
        }
        lobe = i;
      }
    }
    return new RockPasses(fit, List.copyOf(times));
  }

  private static double zero(TiltFit fit, double fromS, double toS) {
    SplineBasis basis = fit.problem().basis();
    boolean negative = basis.valueAt(fromS, fit.coefficients()) < 0;
    double lowS = fromS;
    double highS = toS;
    for (int k = 0; k < BISECTIONS; k++) {
      double middleS = (lowS + highS) / 2;
      if (basis.valueAt(middleS, fit.coefficients()) < 0 == negative) {
        lowS = middleS;
      } else {
        highS = middleS;
      }
    }
    return (lowS + highS) / 2;
  }

  int count() {
    return timesS.size();
  }

  /** Mean number of samples from one pass to the next; at least two passes. */
  double samplesPerRock() {
    double spanS = timesS.get(count() - 1) - timesS.get(0);
    return spanS / (count() - 1) / fit.problem().trace().medianGapS();
  }

  /**
   * The record without the way in and the way out: what lies more than a swing outside the first
   * and last passes is left off.
   */
  RockTrace inside(RockTrace full) {
    int last = count() - 1;
    double firstSwingS = Math.max(timesS.get(1) - timesS.get(0), timesS.get(2) - timesS.get(1));
    double lastSwingS =
        Math.max(
            timesS.get(last) - timesS.get(last - 1), timesS.get(last - 1) - timesS.get(last - 2));
    return full.between(
        timesS.get(0) - OUTSIDE * firstSwingS, timesS.get(last) + OUTSIDE * lastSwingS);
  }

  /** Part of the samples between the first and the last pass that is rejected. */
  double rejectedPart() {
    double[] tS = fit.problem().trace().tS();
    int all = 0;
    int rejected = 0;
    for (int i = 0; i < tS.length; i++) {
      if (tS[i] >= timesS.get(0) && tS[i] <= timesS.get(count() - 1)) {
        all++;
        rejected += fit.problem().used()[i] ? 0 : 1;
      }
    }
    return (double) rejected / all;
  }

  /** For every sample the pass it belongs to: they part where the gauge leans most. */
  int[] stretches() {
    int[] stretch = new int[fit.problem().trace().size()];
    int from = 0;
    for (int k = 0; k < count(); k++) {
      int to = k + 1 < count() ? farthestAfter(k) : stretch.length - 1;
      for (; from <= to; from++) {
        stretch[from] = k;
      }
    }
    return stretch;
  }

  /** The fit with a diameter of its own for each pass; null when they cannot be told apart. */
  TiltSolution split() {
    return TiltSolver.split(fit, stretches(), count());
  }

  /** The sample at which the gauge leans most between pass {@code k} and the next. */
  int farthestAfter(int k) {
    return farthest(timesS.get(k), timesS.get(k + 1));
  }

  private int farthest(double fromS, double toS) {
    double[] tS = fit.problem().trace().tS();
    int farthest = -1;
    for (int i = 0; i < tS.length && tS[i] < toS; i++) {
      boolean counts = tS[i] > fromS && fit.problem().used()[i];
      if (counts && (farthest < 0 || Math.abs(fit.root(i)) > Math.abs(fit.root(farthest)))) {
        farthest = i;
      }
    }
    return farthest;
  }
}
