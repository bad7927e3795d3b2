package boreledger.calc.uncertainty;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;

/**
 * One line of an uncertainty budget, such as the setting ring's calibration with 0.0005 mm.
 *
 * @param name what it comes from, in words for a person
 * @param standardUncertaintyMm its contribution to the result in millimetres, sensitivity included;
 *     zero or more
 * @param degreesOfFreedom how well that is known; above zero, {@link Double#POSITIVE_INFINITY} for
 *     a bound that is taken as certain
 */
public record Component(String name, double standardUncertaintyMm, double degreesOfFreedom) {
  /**
   * Checks both numbers.
   *
   * @throws ImpossibleInput when the uncertainty is negative or not finite, or the degrees of
   *     freedom are not above zero
   */
  public Component {
    Require.notNegative("standard uncertainty of " + name, standardUncertaintyMm, "mm");
    if (!(degreesOfFreedom > 0)) {
      throw new ImpossibleInput(
          "degrees of freedom of " + name + " " + degreesOfFreedom + " are not above zero");
    }
  }

  /** A component known from elsewhere than repeated readings, with infinite degrees of freedom. */
  public static Component typeB(String name, double standardUncertaintyMm) {
    return new Component(name, standardUncertaintyMm, Double.POSITIVE_INFINITY);
  }

  /**
   * The same component in a result that depends on it by a factor.
   *
   * @param sensitivity the factor; its sign does not matter
   */
  public Component times(double sensitivity) {
    return new Component(name, Math.abs(sensitivity) * standardUncertaintyMm, degreesOfFreedom);
  }

  double varianceMm2() {
    return standardUncertaintyMm * standardUncertaintyMm;
  }
}
