package boreledger.station.wording;

import boreledger.station.job.DisplayUnit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Lengths as a sheet shows them: no more digits than their uncertainty leaves meaning in, such as
 * {@code 96.0148 ± 0.0033}. Rounding is half up, away from zero; what rounds to zero has no sign.
 *
 * @param unit millimetres or inches
 */
public record LengthFormat(DisplayUnit unit) {
  /** What stands before a negative number. */
  public static final String MINUS = "\u2212";

  private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
  private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.HALF_UP);
  private static final int MOST_DECIMALS = 6;
  private static final int MOST_STATED_DECIMALS = 5;

  /** The unit's symbol. */
  public String symbol() {
    return unit.symbol();
  }

  /** A length in the unit, as a number. */
  public double shown(double mm) {
    return exactly(mm).doubleValue();
  }

  /**
   * How many decimals a length has whose expanded uncertainty is known: those of the uncertainty
   * rounded to two significant digits; without one, a tenth of a micrometre or finer.
   *
   * @param uncertaintyMm null or 0 when there is none
   */
  public int decimals(Double uncertaintyMm) {
    if (uncertaintyMm == null || uncertaintyMm == 0) {
      return usualDecimals();
    }
    BigDecimal rounded = exactly(uncertaintyMm).round(TWO_DIGITS);
    int decimals = rounded.scale() + TWO_DIGITS.getPrecision() - rounded.precision();
    return Math.max(0, Math.min(MOST_DECIMALS, decimals));
  }

  /** A length without its unit; a dash when it is not known. */
  public String number(Double mm, int decimals) {
    return mm == null ? "-" : signed(rounded(mm, decimals), "");
  }

  /** A difference without its unit, always with its sign. */
  public String difference(Double mm, int decimals) {
    return mm == null ? "-" : signed(rounded(mm, decimals), "+");
  }

  /** A length with its uncertainty, without the unit; a dash when it is not known. */
  public String number(Double mm, Double uncertaintyMm) {
    if (mm == null) {
      return "-";
    }
    int decimals = decimals(uncertaintyMm);
    String number = number(mm, decimals);
    return uncertaintyMm == null ? number : number + " ± " + number(uncertaintyMm, decimals);
  }

  /** A length with its uncertainty and unit. */
  public String length(Double mm, Double uncertaintyMm) {
    return number(mm, uncertaintyMm) + " " + symbol();
  }

  /** A length with its unit. */
  public String length(Double mm, int decimals) {
    return number(mm, decimals) + " " + symbol();
  }

  /**
   * A length that somebody stated, such as a limit, without its unit: as many decimals as it has,
   * at least three in millimetres and four in inches, at most five.
   */
  public String stated(double mm) {
    int least = unit == DisplayUnit.IN ? 4 : 3;
    BigDecimal plain = exactly(mm).setScale(MOST_STATED_DECIMALS, RoundingMode.HALF_UP);
    BigDecimal bare = plain.signum() == 0 ? BigDecimal.ZERO : plain.stripTrailingZeros();
    return signed(bare.setScale(Math.max(least, bare.scale()), RoundingMode.UNNECESSARY), "");
  }

  /** A depth without its unit, in as few decimals as it has, at most three. */
  public String depth(double mm) {
    BigDecimal depth = exactly(mm).setScale(3, RoundingMode.HALF_UP);
    return depth.signum() == 0 ? "0" : depth.stripTrailingZeros().toPlainString();
  }

  /** How many decimals a length has when no uncertainty is known. */
  public int usualDecimals() {
    return unit == DisplayUnit.IN ? 5 : 4;
  }

  /** How many decimals an estimate of a hundredth of a millimetre or so has. */
  public int coarseDecimals() {
    return unit == DisplayUnit.IN ? 4 : 3;
  }

  private BigDecimal rounded(double mm, int decimals) {
    return exactly(mm).setScale(decimals, RoundingMode.HALF_UP);
  }

  private BigDecimal exactly(double mm) {
    BigDecimal number = BigDecimal.valueOf(mm);
    return unit == DisplayUnit.IN ? number.divide(MM_PER_INCH, MathContext.DECIMAL64) : number;
  }

  private static String signed(BigDecimal number, String plus) {
    String digits = number.abs().toPlainString();
    return switch (number.signum()) {
      case 1 -> plus + digits;
      case -1 -> MINUS + digits;
      default -> digits;
    };
  }
}
