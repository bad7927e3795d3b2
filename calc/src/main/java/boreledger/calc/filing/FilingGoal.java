package boreledger.calc.filing;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;

/**
 * What the gap is filed to.
 *
 * @param targetMm the gap wanted in millimetres; above zero
 * @param toleranceMm how far it may pass the target; zero or more
 * @param largestMm the largest gap allowed where the gap is reckoned, not below the target; null
 *     for no limit
 */
public record FilingGoal(double targetMm, double toleranceMm, Double largestMm) {
  /** How far a gap may pass its target when nothing else is said, in millimetres. */
  public static final double DEFAULT_TOLERANCE_MM = 0.02;

  /**
   * Checks every number.
   *
   * @throws ImpossibleInput when the largest gap is below the target
   */
  public FilingGoal {
    Require.positive("target gap", targetMm, "mm");
    Require.notNegative("tolerance of the target gap", toleranceMm, "mm");
    if (largestMm != null && Require.positive("largest gap", largestMm, "mm") < targetMm) {
      throw new ImpossibleInput(
          "largest gap " + largestMm + " mm is below the target gap " + targetMm + " mm");
    }
  }

  /** A target with the default tolerance. */
  public static FilingGoal of(double targetMm, Double largestMm) {
    return new FilingGoal(targetMm, DEFAULT_TOLERANCE_MM, largestMm);
  }

  /** The gap that filing must not pass, in millimetres. */
  public double limitMm() {
    double tolerated = targetMm + toleranceMm;
    return largestMm == null ? tolerated : Math.min(tolerated, largestMm);
  }
}
