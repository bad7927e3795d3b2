package boreledger.calc.rock;

import java.util.List;

/**
 * Finds the diameter in the values of a gauge rocked through square.
 *
 * <p>A two-point gauge with anvil radius ρ, tilted by θ, reads {@code (D − 2ρ)/cos θ + 2ρ}. The
 * lowest sample is a poor answer: with few samples per rock it lies above the minimum, with many
 * noisy ones below it, and one low glitch ruins it. Here the law itself is fitted with one diameter
 * and one smooth tilt over the whole record: what lies above the diameter is the square of a root
 * that is nearly proportional to the tilt, so neither ρ nor the size of the bore need be known. How
 * smooth the hand is, how fast it rocks and how true the samples' times are, the record says itself
 * (restricted likelihood). What the rest of the record contradicts is left out.
 *
 * <p>Special cases:
 *
 * <ul>
 *   <li>samples that are not finite or run back in time are passed over, and of several with one
 *       time all but the last
 *   <li>a steady value at either end (free air, a waiting hand) is left off, and so are the ways in
 *       and out of the bore
 *   <li>fewer passes than asked for, fewer than four samples per rock, a tenth of the samples not
 *       fitting, or an uncertainty above 0.002 mm and above the digit step: {@link
 *       RockEstimate.NotEnough}
 *   <li>rocks that disagree among themselves widen the uncertainty (Birge ratio)
 * </ul>
 *
 * <p>Sources: the law from geometry; penalised splines after Eilers and Marx (1996); restricted
 * likelihood after Patterson and Thompson (1971); Birge (1932).
 */
public final class RockEstimator {
  private static final int FEWEST_SAMPLES = 12;
  private static final int FEWEST_ROCKS = 3;
  private static final double STEADY_MM = 0.005;
  private static final int STEADY_STEPS = 3;
  private static final int TRIMS = 4;

  private RockEstimator() {}

  /**
   * Estimates the value square to the bore.
   *
   * @param samples one reading's samples, in order
   * @param resolutionMm the gauge's digit step in millimetres; positive
   * @param minRocks the fewest passes through square that give a value; three at least are asked
   */
  public static RockEstimate estimate(List<RockSample> samples, double resolutionMm, int minRocks) {
    double steadyMm = Math.max(STEADY_MM, STEADY_STEPS * resolutionMm);
    RockTrace trace = RockTrace.of(samples).withoutSteadyEnds(steadyMm);
    int fewest = Math.max(FEWEST_ROCKS, minRocks);
    TiltFit start = trace.size() < FEWEST_SAMPLES ? null : TiltStart.likeliest(trace);
    if (start == null) {
      return RockJudgement.tooFew(0, fewest);
    }
    RockPasses passes = RockPasses.of(start);
    RockTrace inside = passes.count() < fewest ? trace : passes.inside(trace);
    for (int k = 0; k < TRIMS && passes.count() >= fewest; k++) {
      TiltFit fit = TiltRefinement.of(passes.fit(), inside);
      if (fit == null) {
        return RockJudgement.tooFew(0, fewest);
      }
      passes = RockPasses.of(fit);
      RockTrace trimmed = RockEnds.without(passes, fewest);
      if (trimmed.size() == inside.size()) {
        break;
      }
      inside = trimmed;
    }
    return new RockJudgement(passes, resolutionMm).estimate(fewest);
  }
}
