package boreledger.station.bench.words;

import boreledger.station.job.DisplayUnit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Lengths as a job wants them shown: millimetres with four decimals or inches with five, such as
 * {@code 96.0213 mm} or {@code 3.78037 in}. Rounding is half up, away from zero; a value that
 * rounds to zero has no sign.
 */
public record Lengths(DisplayUnit unit) {
  /** What stands before a negative number. */
  public static final String MINUS = "\u2212";

  private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");
  private static final int MM_DECIMALS = 4;
  private static final int INCH_DECIMALS = 5;
  private static final int INCH_DEPTH_DECIMALS = 3;

  /** The unit's symbol. */
  public String symbol() {
    return unit == DisplayUnit.IN ? "in" : "mm";
  }

  /** The number without its sign, such as {@code 0.0130}. */
  public String digits(double mm) {
    return rounded(mm).abs().toPlainString();
  }

  /** {@code +}, {@link #MINUS}, or nothing for a value that rounds to zero. */
  public String sign(double mm) {
    return switch (rounded(mm).signum()) {
      case 1 -> "+";
      case -1 -> MINUS;
      default -> "";
    };
  }

  /** A size without its unit: only a negative one has a sign. */
  public String number(double mm) {
    return (rounded(mm).signum() < 0 ? MINUS : "") + digits(mm);
  }

  /** A size with its unit. */
  public String size(double mm) {
    return number(mm) + " " + symbol();
  }

  /** A deviation with its sign and unit. */
  public String deviation(double mm) {
    return sign(mm) + digits(mm) + " " + symbol();
  }

  /** A depth in as few decimals as it has, at most three in inches, with its unit. */
  public String depth(double mm) {
    BigDecimal number = BigDecimal.valueOf(mm);
    if (unit == DisplayUnit.IN) {
      number = number.divide(MM_PER_INCH, INCH_DEPTH_DECIMALS, RoundingMode.HALF_UP);
    }
    return plain(number) + " " + symbol();
  }

  /** A plain number in as few decimals as it has. */
  public static String plain(double number) {
    return plain(BigDecimal.valueOf(number));
  }

  /** How many digits stand before the point. */
  public int integerDigits(double mm) {
    return digits(mm).indexOf('.');
  }

  private static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  private BigDecimal rounded(double mm) {
    BigDecimal number = BigDecimal.valueOf(mm);
    return unit == DisplayUnit.IN
        ? number.divide(MM_PER_INCH, INCH_DECIMALS, RoundingMode.HALF_UP)
        : number.setScale(MM_DECIMALS, RoundingMode.HALF_UP);
  }
}
