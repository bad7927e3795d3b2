package boreledger.station.job;

/**
 * Temperatures of the running engine and the margin wanted then; each null when the job leaves it
 * out.
 */
public record Running(
    Double ringTempC, Double wallTopTempC, Double wallBottomTempC, Double hotMarginMm) {
  /** The coldest that a part of an engine is thought of, in degrees Celsius. */
  public static final double COLDEST_C = -60;

  /** The hottest likewise. */
  public static final double HOTTEST_C = 1000;

  /** Whether a part can have this temperature. */
  public static boolean isPossible(double tempC) {
    return tempC >= COLDEST_C && tempC <= HOTTEST_C;
  }
}
