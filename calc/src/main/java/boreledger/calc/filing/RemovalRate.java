package boreledger.calc.filing;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.util.Arrays;
import java.util.List;

/**
 * What a turn takes off, from two or more passes.
 *
 * <p>The spread from pass to pass is the standard deviation of the passes' own rates. The scatter
 * of the readings is in it and is not taken off again: a handful of passes cannot tell one from the
 * other, and a spread thought too small would let a pass go too far. With readings much finer than
 * the spread the prediction is exactly Student's t; with coarser ones it errs to fewer turns.
 *
 * @param perTurnMm the removal per turn in millimetres
 * @param standardUncertaintyMm how well that mean is known
 * @param passToPassMm how far the rate of a single pass strays from it, as a standard deviation,
 *     the readings' scatter included; zero or more
 * @param lastReadingShare by how much the removal per turn grows with the last gap read, per
 *     millimetre
 * @param degreesOfFreedom passes less one
 */
public record RemovalRate(
    double perTurnMm,
    double standardUncertaintyMm,
    double passToPassMm,
    double lastReadingShare,
    int degreesOfFreedom) {
  /**
   * Fits the removal per turn.
   *
   * @param passes in the order they were filed, two or more
   * @param readingUncertaintyMm the standard uncertainty of one gap reading; above zero
   * @throws ImpossibleInput when there are fewer than two passes
   */
  public static RemovalRate of(List<FilingPass> passes, double readingUncertaintyMm) {
    Require.atLeast(2, passes.size(), "filing passes");
    Require.positive("standard uncertainty of a gap", readingUncertaintyMm, "mm");
    double readingMm2 = readingUncertaintyMm * readingUncertaintyMm;
    double rateMm2 = rateVarianceMm2(passes);
    RateFit fit = RateFit.of(passes, readingMm2, rateMm2);
    return new RemovalRate(
        fit.slopeMm(),
        Math.sqrt(fit.slopeVarianceMm2()),
        Math.sqrt(rateMm2),
        fit.lastWeight(),
        passes.size() - 1);
  }

  private static double rateVarianceMm2(List<FilingPass> passes) {
    double[] rates = passes.stream().mapToDouble(pass -> pass.removedMm() / pass.turns()).toArray();
    double mean = Arrays.stream(rates).average().orElseThrow();
    return Arrays.stream(rates).map(rate -> (rate - mean) * (rate - mean)).sum()
        / (rates.length - 1);
  }
}
