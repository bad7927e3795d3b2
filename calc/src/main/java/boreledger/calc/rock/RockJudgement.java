package boreledger.calc.rock;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Turns a fit into a value with its uncertainty, or into the reason why it gives none. */
final class RockJudgement {
  private static final double FEWEST_SAMPLES_PER_ROCK = 4;
  private static final double MOST_REJECTED = 0.10;
  private static final double WORST_UNCERTAINTY_MM = 0.002;

  /** Standard deviations by which a Birge ratio may exceed one before it is believed. */
  private static final double DISAGREEMENT = 2;

  private final TiltFit fit;
  private final RockPasses passes;
  private final double resolutionMm;
  private final double noiseVariance;

  /**
   * @param passes the passes of the last fit
   * @param resolutionMm digit step: even a fit without residuals is no better than rounding allows
   */
  RockJudgement(RockPasses passes, double resolutionMm) {
    this.fit = passes.fit();
    this.passes = passes;
    this.resolutionMm = resolutionMm;
    this.noiseVariance = Math.max(fit.noiseVariance(), roundingVariance());
  }

  static RockEstimate tooFew(int rocks, int fewest) {
    return new RockEstimate.NotEnough(rocks, rocks + " rocks seen, " + fewest + " needed");
  }

  RockEstimate estimate(int fewest) {
    if (passes.count() < fewest) {
      return tooFew(passes.count(), fewest);
    }
    if (passes.samplesPerRock() < FEWEST_SAMPLES_PER_ROCK) {
      return notEnough(
          "%.1f samples per rock, %.0f needed: rock slower",
          passes.samplesPerRock(), FEWEST_SAMPLES_PER_ROCK);
    }
    if (passes.rejectedPart() > MOST_REJECTED) {
      return notEnough(
          "%.0f %% of the samples do not fit a rocked gauge: rock again",
          100 * passes.rejectedPart());
    }
    TiltSolution split = passes.split();
    return split == null ? notEnough("the rocks cannot be told apart: rock again") : value(split);
  }

  private RockEstimate value(TiltSolution split) {
    double variance = PriorSpread.variance(fit, noiseVariance) * disagreement(split);
    double u = Math.sqrt(variance + sharedRoundingVariance());
    if (!(u <= Math.max(WORST_UNCERTAINTY_MM, resolutionMm))) {
      return notEnough("uncertain by %.4f mm: rock slower and more evenly", u);
    }
    int rejected = fit.problem().trace().size() - fit.problem().usedCount();
    return new RockEstimate.Found(
        meanTimeS(split), fit.diameterMm(), u, passes.count(), vertices(split), rejected);
  }

  private double roundingVariance() {
    return resolutionMm * resolutionMm / 12;
  }

  /**
   * What rounding leaves behind where noise does not blur it: the samples around one vertex are
   * then rounded alike, so that a vertex counts as one of them. The noise's characteristic function
   * at one digit step says how much is left (Widrow's theorem).
   */
  private double sharedRoundingVariance() {
    double noise = Math.max(0, fit.noiseVariance() - roundingVariance());
    double steps = 2 * Math.PI / resolutionMm;
    double left = Math.exp(-steps * steps * noise / 2);
    return roundingVariance() * left * left / passes.count();
  }

  /**
   * The factor on the variance when the rocks' own values scatter more than their uncertainties say
   * (Birge ratio squared), or 1 when chance explains it.
   */
  private double disagreement(TiltSolution split) {
    double[] off = new double[passes.count()];
    for (int k = 0; k < off.length; k++) {
      off[k] = split.diameterMm()[k] - fit.diameterMm();
    }
    int degreesOfFreedom = off.length - 1;
    double ratio = split.diameterFactor().quadraticForm(off) / noiseVariance / degreesOfFreedom;
    return ratio > 1 + DISAGREEMENT * Math.sqrt(2.0 / degreesOfFreedom) ? ratio : 1;
  }

  /** The mean of the vertices' times, weighted as their values are. */
  private double meanTimeS(TiltSolution split) {
    double[] weight = split.diameterWeights();
    double sum = 0;
    for (int k = 0; k < weight.length; k++) {
      sum += weight[k] * passes.timesS().get(k);
    }
    return sum;
  }

  private List<RockVertex> vertices(TiltSolution split) {
    List<RockVertex> vertices = new ArrayList<>();
    for (int k = 0; k < passes.count(); k++) {
      double u = Math.sqrt(split.diameterVariance(k) * noiseVariance);
      vertices.add(new RockVertex(passes.timesS().get(k), split.diameterMm()[k], u));
    }
    return vertices;
  }

  private RockEstimate notEnough(String why, Object... values) {
    return new RockEstimate.NotEnough(passes.count(), String.format(Locale.ROOT, why, values));
  }
}
