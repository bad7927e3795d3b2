package boreledger.station.truth;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Setting ring, block and their temperatures: what links a comparator's reading with a diameter.
 *
 * <p>Derivation. A body of length l at 20 °C has l·(1 + α·(T − 20)) at T. On the setting ring the
 * gauge shows z although the ring has the size M(Tm); in the bore it shows r. The gauge is straight
 * over so short a way, so the bore differs from the ring by r − z, and dividing by the block's
 * growth gives the diameter at 20 °C. All in decimals of 34 digits.
 */
public record Bench(
    BigDecimal settingSizeMm,
    BigDecimal settingCtePerK,
    BigDecimal settingTempC,
    BigDecimal blockCtePerK,
    BigDecimal blockTempC) {
  static final MathContext DIGITS = MathContext.DECIMAL128;
  private static final BigDecimal REFERENCE_C = BigDecimal.valueOf(20);

  /** Growth of a length from 20 °C to a temperature, as a factor near 1. */
  public static BigDecimal growth(BigDecimal ctePerK, BigDecimal tempC) {
    return BigDecimal.ONE.add(ctePerK.multiply(tempC.subtract(REFERENCE_C)));
  }

  /** Size of the setting ring at its own temperature. */
  public BigDecimal settingNowMm() {
    return settingSizeMm.multiply(growth(settingCtePerK, settingTempC));
  }

  /** Growth of the block from 20 °C to the bench's temperature. */
  public BigDecimal blockGrowth() {
    return growth(blockCtePerK, blockTempC);
  }

  /** Diameter at 20 °C from a deviation read in the bore and the zero of that moment. */
  public BigDecimal diameterAt20Mm(BigDecimal deviationMm, BigDecimal zeroMm) {
    return settingNowMm().add(deviationMm).subtract(zeroMm).divide(blockGrowth(), DIGITS);
  }

  /** What a gauge without noise shows in a bore of this diameter at 20 °C. */
  public double deviationMm(double diameterAt20Mm, double zeroMm) {
    double now = diameterAt20Mm * blockGrowth().doubleValue();
    return now - settingNowMm().doubleValue() + zeroMm;
  }
}
