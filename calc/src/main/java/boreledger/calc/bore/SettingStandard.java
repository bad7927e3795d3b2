package boreledger.calc.bore;

import boreledger.calc.input.Require;

/**
 * What the bore gauge is zeroed on: a setting ring, or a micrometer.
 *
 * @param sizeMm certified size at 20 degrees Celsius in millimetres; above zero
 * @param expandedUncertaintyMm of that size, k = 2, in millimetres; zero or more
 * @param ctePerK linear expansion coefficient per kelvin
 * @param maxErrorMm a micrometer's own maximum permissible error in millimetres; 0 for a ring
 */
public record SettingStandard(
    double sizeMm, double expandedUncertaintyMm, double ctePerK, double maxErrorMm) {
  /** Checks every number. */
  public SettingStandard {
    Require.positive("setting size", sizeMm, "mm");
    Require.notNegative("setting's expanded uncertainty", expandedUncertaintyMm, "mm");
    Require.finite("setting's expansion coefficient", ctePerK, "per kelvin");
    Require.notNegative("setting's permissible error", maxErrorMm, "mm");
  }

  /** A setting ring. */
  public static SettingStandard ring(double sizeMm, double expandedUncertaintyMm, double ctePerK) {
    return new SettingStandard(sizeMm, expandedUncertaintyMm, ctePerK, 0);
  }

  /** Its size at a temperature, in millimetres. */
  public double sizeAtMm(double tempC) {
    return sizeMm * ReferenceTemperature.growth(ctePerK, tempC);
  }
}
