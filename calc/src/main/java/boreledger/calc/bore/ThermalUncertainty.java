package boreledger.calc.bore;

import boreledger.calc.input.Require;

/**
 * How well temperatures and expansion coefficients are known; a job may overrule each.
 *
 * @param temperatureK standard uncertainty of a part's temperature in kelvin
 * @param ctePerK standard uncertainty of an expansion coefficient per kelvin
 * @param gaugeWarmingK standard uncertainty of how far the gauge warms between setting and reading,
 *     in kelvin
 * @param gaugeCtePerK the gauge's own expansion coefficient per kelvin
 */
public record ThermalUncertainty(
    double temperatureK, double ctePerK, double gaugeWarmingK, double gaugeCtePerK) {
  /**
   * 0.5 K, 0.5e-6 per kelvin, 0.5 K, and steel's 11.5e-6 per kelvin for the gauge: common practice,
   * no source, but for the coefficient of gauge steel (D. A. Swyt, J. Res. NIST 99 (1994) 31).
   */
  public static final ThermalUncertainty DEFAULT =
      new ThermalUncertainty(0.5, 0.5e-6, 0.5, 11.5e-6);

  /** Checks every number. */
  public ThermalUncertainty {
    Require.notNegative("uncertainty of a temperature", temperatureK, "K");
    Require.notNegative("uncertainty of an expansion coefficient", ctePerK, "per kelvin");
    Require.notNegative("uncertainty of the gauge's warming", gaugeWarmingK, "K");
    Require.notNegative("gauge's expansion coefficient", gaugeCtePerK, "per kelvin");
  }
}
