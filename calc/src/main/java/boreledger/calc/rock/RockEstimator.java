package boreledger.calc.rock;

import java.util.Arrays;
import java.util.List;

/** Finds the diameter in the values of a gauge rocked through square. */
public final class RockEstimator {
  private static final double FINEST_KNOT_S = 0.05;
  private static final int REVISIONS = 10;
  private static final int FEWEST_SAMPLES = 12;

  private RockEstimator() {}

  /**
   * Estimates the value square to the bore.
   *
   * @param samples one reading's samples, in order
   * @param resolutionMm the gauge's digit step in millimetres; positive
   * @param minRocks the fewest passes through square that give a value
   */
  public static RockEstimate estimate(List<RockSample> samples, double resolutionMm, int minRocks) {
    RockTrace trace = RockTrace.of(samples);
    if (trace.size() < FEWEST_SAMPLES) {
      return new RockEstimate.NotEnough(
          0, trace.size() + " samples, at least " + FEWEST_SAMPLES + " needed");
    }
    TiltFit start = TiltStart.likeliest(trace);
    TiltFit fit = start == null ? null : refined(start, trace);
    if (fit == null) {
      return new RockEstimate.NotEnough(0, "0 rocks seen, " + minRocks + " needed");
    }
    return judged(fit, resolutionMm, minRocks);
  }

  private static TiltFit refined(TiltFit start, RockTrace trace) {
    TiltFit fit = TiltStart.transfer(start, trace, Math.max(FINEST_KNOT_S, trace.medianGapS()));
    double step = 1;
    for (int k = 0; k < REVISIONS && fit != null; k++) {
      fit = PriorSearch.around(fit, step);
      boolean[] used = Rejection.revise(fit);
      if (Arrays.equals(used, fit.problem().used())) {
        break;
      }
      fit = TiltSolver.fit(fit, fit.problem().withUsed(used), fit.prior(), REVISIONS);
      step = 0.35;
    }
    return fit;
  }

  private static RockEstimate judged(TiltFit fit, double resolutionMm, int minRocks) {
    List<RockVertex> vertices = RockVertices.of(fit);
    if (vertices.size() < minRocks) {
      return new RockEstimate.NotEnough(
          vertices.size(), vertices.size() + " rocks seen, " + minRocks + " needed");
    }
    double variance = Math.max(fit.noiseVariance(), resolutionMm * resolutionMm / 12);
    double u = Math.sqrt(variance * fit.diameterVarianceShare());
    double tS = vertices.stream().mapToDouble(v -> v.share() * v.tS()).sum();
    int rejected = fit.problem().trace().size() - fit.problem().usedCount();
    return new RockEstimate.Found(tS, fit.diameterMm(), u, vertices.size(), vertices, rejected);
  }
}
