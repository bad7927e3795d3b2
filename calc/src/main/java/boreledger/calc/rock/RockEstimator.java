package boreledger.calc.rock;

import java.util.List;

/** Finds the diameter in the values of a gauge rocked through square. */
public final class RockEstimator {
  private RockEstimator() {}

  /**
   * Estimates the value square to the bore.
   *
   * @param samples one reading's samples, in order
   * @param resolutionMm the gauge's digit step in millimetres; positive
   * @param minRocks the fewest passes through square that give a value
   */
  public static RockEstimate estimate(List<RockSample> samples, double resolutionMm, int minRocks) {
    return new RockEstimate.NotEnough(0, "0 rocks seen, " + minRocks + " needed");
  }
}
