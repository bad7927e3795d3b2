package boreledger.calc.bore;

/** The temperature at which lengths are stated, 20 degrees Celsius (ISO 1). */
public final class ReferenceTemperature {
  /** 20 degrees Celsius. */
  public static final double C = 20.0;

  private ReferenceTemperature() {}

  /**
   * How many times its length at 20 degrees Celsius a part has at another temperature.
   *
   * @param ctePerK its linear expansion coefficient per kelvin
   * @param tempC its temperature in degrees Celsius
   */
  public static double growth(double ctePerK, double tempC) {
    return 1 + ctePerK * (tempC - C);
  }
}
