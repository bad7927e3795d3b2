package boreledger.calc.rock;

import java.util.ArrayList;
import java.util.List;

/** Finds the passes through square in a fit. */
final class RockVertices {
  /** A lobe lower than this many standard deviations of a value may be noise alone. */
  private static final double LOBE = 8;

  private RockVertices() {}

  static List<RockVertex> of(TiltFit fit) {
    List<Double> times = crossings(fit);
    double[] share = new double[times.size()];
    double[] moment = new double[times.size()];
    double total = 0;
    double[] tS = fit.problem().trace().tS();
    int k = 0;
    for (int i = 0; i < tS.length && !times.isEmpty(); i++) {
      while (k + 1 < share.length && tS[i] > (times.get(k) + times.get(k + 1)) / 2) {
        k++;
      }
      // Samples far out may have a negative part; as a weight of time it would make no sense.
      double part = Math.max(0, fit.share(i));
      share[k] += part;
      moment[k] += part * fit.residualMm(i);
      total += part;
    }
    List<RockVertex> vertices = new ArrayList<>();
    for (k = 0; k < share.length; k++) {
      double offMm = share[k] > 0 ? moment[k] / share[k] : 0;
      vertices.add(new RockVertex(times.get(k), fit.diameterMm() + offMm, share[k] / total));
    }
    return vertices;
  }

  /** Times at which the root changes its sign for good, from one lobe to the next. */
  private static List<Double> crossings(TiltFit fit) {
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
    return times;
  }

  private static double zero(TiltFit fit, double fromS, double toS) {
    SplineBasis basis = fit.problem().basis();
    boolean negative = basis.valueAt(fromS, fit.coefficients()) < 0;
    double lowS = fromS;
    double highS = toS;
    for (int k = 0; k < 30; k++) {
      double middleS = (lowS + highS) / 2;
      if (basis.valueAt(middleS, fit.coefficients()) < 0 == negative) {
        lowS = middleS;
      } else {
        highS = middleS;
      }
    }
    return (lowS + highS) / 2;
  }
}
