package boreledger.station.job;

/**
 * Standard uncertainties of what a person puts in.
 *
 * @param temperatureK of the block's and the setting ring's temperature
 * @param ctePerK of every expansion coefficient
 * @param gaugeTemperatureK of the change of the gauge's own temperature between setting and reading
 * @param gaugeCtePerK the gauge's own expansion coefficient
 */
public record InputUncertainty(
    double temperatureK, double ctePerK, double gaugeTemperatureK, double gaugeCtePerK) {
  /** Common practice, no source: thermometer to 0.5 K, coefficients to 0.5e-6, a steel gauge. */
  public static final InputUncertainty DEFAULT = new InputUncertainty(0.5, 0.5e-6, 0.5, 11.5e-6);
}
