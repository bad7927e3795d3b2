package boreledger.station.bench.words;

import boreledger.station.job.DisplayUnit;
import boreledger.station.wording.LengthFormat;
import java.math.BigDecimal;

/**
 * Lengths as the bench shows them from afar: always the same number of decimals, so that digits
 * stand still while the gauge moves. Whatever has an uncertainty is written by {@link #format}.
 */
public record Lengths(DisplayUnit unit) {
  /** What stands before a negative number. */
  public static final String MINUS = LengthFormat.MINUS;

  /** The same unit, with as many digits as an uncertainty leaves meaning in. */
  public LengthFormat format() {
    return new LengthFormat(unit);
  }

  /** The unit's symbol. */
  public String symbol() {
    return unit.symbol();
  }

  /** The number without its sign, such as {@code 0.0130}. */
  public String digits(double mm) {
    return number(Math.abs(mm));
  }

  /** {@code +}, {@link #MINUS}, or nothing for a value that rounds to zero. */
  public String sign(double mm) {
    String signed = format().difference(mm, format().usualDecimals());
    return Character.isDigit(signed.charAt(0)) ? "" : signed.substring(0, 1);
  }

  /** A size without its unit: only a negative one has a sign. */
  public String number(double mm) {
    return format().number(mm, format().usualDecimals());
  }

  /** A size with its unit. */
  public String size(double mm) {
    return number(mm) + " " + symbol();
  }

  /** A deviation with its sign and unit. */
  public String deviation(double mm) {
    return format().difference(mm, format().usualDecimals()) + " " + symbol();
  }

  /** A depth in as few decimals as it has, at most three, with its unit. */
  public String depth(double mm) {
    return format().depth(mm) + " " + symbol();
  }

  /** A plain number in as few decimals as it has. */
  public static String plain(double number) {
    BigDecimal exactly = BigDecimal.valueOf(number);
    return exactly.signum() == 0 ? "0" : exactly.stripTrailingZeros().toPlainString();
  }

  /** How many digits stand before the point. */
  public int integerDigits(double mm) {
    return digits(mm).indexOf('.');
  }
}
