package boreledger.calc.bore;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;

/**
 * What holds for every reading of one session with the bore gauge.
 *
 * @param setting what the gauge was zeroed on
 * @param zero the readings on it
 * @param gauge what the gauge promises
 * @param repeatability how readings scatter; null when not known
 * @param blockTempC the block's temperature in degrees Celsius; 20 when it was not taken
 * @param boreCtePerK the bore's linear expansion coefficient per kelvin
 * @param thermal how well temperatures and coefficients are known
 */
public record BoreGauging(
    SettingStandard setting,
    ZeroLine zero,
    GaugeAccuracy gauge,
    Repeatability repeatability,
    double blockTempC,
    double boreCtePerK,
    ThermalUncertainty thermal) {
  /** Checks both numbers. */
  public BoreGauging {
    Require.finite("block temperature", blockTempC, "degC");
    Require.finite("bore's expansion coefficient", boreCtePerK, "per kelvin");
  }

  /**
   * The bore's diameter at a reading.
   *
   * @throws ImpossibleInput when it comes out at zero or less
   */
  public Diameter diameter(BoreReading reading) {
    return new Diameter(this, reading);
  }

  /**
   * The diameter at 20 degrees Celsius in millimetres: {@code (M + r - z) / (1 + a(T - 20))}, with
   * M the standard's size when it was read, r the reading and z the zero at that time. It holds for
   * gauges that show deviations and for those that show sizes, since both show the same amount too
   * much in the bore as on the standard.
   */
  double diameterAtReferenceMm(BoreReading reading) {
    double asReadMm = reading.valueMm() - zero.offsetMm(reading.tS(), setting);
    return asReadMm / ReferenceTemperature.growth(boreCtePerK, blockTempC);
  }

  /**
   * How far apart the zeros of the checks lie, in millimetres, the standard's own growth between
   * them taken off; 0 with a single check.
   */
  public double zeroDriftMm() {
    return zero.spreadMm(setting);
  }

  /** Whether the zero moved by more than the gauge's permissible error. */
  public boolean driftBeyondPermissibleError() {
    return zeroDriftMm() > gauge.maxErrorMm();
  }
}
