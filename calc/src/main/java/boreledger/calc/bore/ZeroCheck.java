package boreledger.calc.bore;

import boreledger.calc.input.Require;

/**
 * One reading on the setting standard.
 *
 * @param tS when, in seconds on the readings' clock
 * @param readingMm what the gauge showed, deviation or size, in millimetres
 * @param settingTempC the standard's temperature in degrees Celsius; 20 when it was not taken
 * @param standardUncertaintyMm of this reading itself, from its samples; null when not known
 */
public record ZeroCheck(
    double tS, double readingMm, double settingTempC, Double standardUncertaintyMm) {
  /** Checks that all are numbers, and the uncertainty not negative. */
  public ZeroCheck {
    Require.finite("time of a check", tS, "s");
    Require.finite("reading on the setting", readingMm, "mm");
    Require.finite("setting temperature", settingTempC, "degC");
    if (standardUncertaintyMm != null) {
      Require.notNegative("uncertainty of a check", standardUncertaintyMm, "mm");
    }
  }

  /** A check of whose own scatter nothing is known. */
  public ZeroCheck(double tS, double readingMm, double settingTempC) {
    this(tS, readingMm, settingTempC, null);
  }

  /** What the gauge showed too much: its reading less the standard's size then, in millimetres. */
  double offsetMm(SettingStandard setting) {
    return readingMm - setting.sizeAtMm(settingTempC);
  }
}
