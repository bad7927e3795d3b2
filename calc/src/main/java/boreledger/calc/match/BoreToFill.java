package boreledger.calc.match;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;

/**
 * A bore that is to get a ring.
 *
 * @param name what it is called
 * @param perimeterMm its perimeter where the ring's travel is tightest, at 20 degrees Celsius, in
 *     millimetres; above zero
 * @param targetMm the gap wanted there; above zero
 * @param maxMm the largest gap allowed there, not below the target; null for no limit
 */
public record BoreToFill(String name, double perimeterMm, double targetMm, Double maxMm) {
  /**
   * Checks the lengths.
   *
   * @throws ImpossibleInput when the largest gap is below the target
   */
  public BoreToFill {
    Require.positive("perimeter of bore " + name, perimeterMm, "mm");
    Require.positive("target gap of bore " + name, targetMm, "mm");
    Picometres.of("perimeter of bore " + name, perimeterMm);
    Picometres.of("target gap of bore " + name, targetMm);
    if (maxMm != null && Require.positive("largest gap of bore " + name, maxMm, "mm") < targetMm) {
      throw new ImpossibleInput(
          "largest gap of bore "
              + name
              + " "
              + maxMm
              + " mm is below its target "
              + targetMm
              + " mm");
    }
  }

  long perimeterPm() {
    return Picometres.of("perimeter of bore " + name, perimeterMm);
  }

  long targetPm() {
    return Picometres.of("target gap of bore " + name, targetMm);
  }

  boolean allowsPm(long gapPm) {
    return maxMm == null || gapPm <= Picometres.of("largest gap of bore " + name, maxMm);
  }
}
