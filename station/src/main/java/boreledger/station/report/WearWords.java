package boreledger.station.report;

import boreledger.station.wording.LengthFormat;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** A change of diameter over depth in words; the same number in every unit. */
final class WearWords {
  private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.HALF_UP);

  private WearWords() {}

  /** Micrometres per metre, such as {@code −430 ± 27 µm per metre of depth}. */
  static String of(double slope, double expandedUncertainty) {
    BigDecimal uncertainty = BigDecimal.valueOf(1e6 * expandedUncertainty).round(TWO_DIGITS);
    BigDecimal number =
        BigDecimal.valueOf(1e6 * slope).setScale(uncertainty.scale(), RoundingMode.HALF_UP);
    String sign = number.signum() < 0 ? LengthFormat.MINUS : "";
    return sign
        + number.abs().toPlainString()
        + " ± "
        + uncertainty.toPlainString()
        + " µm per metre of depth";
  }
}
