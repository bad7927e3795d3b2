package boreledger.drivers.decoder;

import boreledger.drivers.file.OneLine;
import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Decimal numbers as gauges write them, such as {@code +0.012}, {@code - 1,5} or {@code 1.0005E+3}.
 *
 * <ul>
 *   <li>A sign, spaces after it, digits with one point or comma among, before or after them, an
 *       exponent: each but the digits may be missing. These are the forms that IEEE 488.2 asks a
 *       forgiving listener to take (NRf, 7.7.2), with the comma added.
 *   <li>At most 255 digits without leading zeros, and an exponent of at most 32000 either way (IEEE
 *       488.2, 7.7.2.4.1).
 *   <li>9.91E37 and ±9.9E37 are no numbers: they stand for "not a number" and infinity (SCPI-99,
 *       volume 1, 7.2.1.4 and 7.2.1.5).
 * </ul>
 */
final class DecimalText {
  private static final Pattern FORM =
      Pattern.compile(
          "(?<sign>[+-]?) *(?<digits>\\d++(?:[.,]\\d*+)?|[.,]\\d++)(?:[eE](?<exponent>[+-]?\\d++))?");
  private static final int MOST_DIGITS = 255;
  private static final int MOST_EXPONENT = 32_000;
  private static final BigDecimal NOT_A_NUMBER = new BigDecimal("9.91E37");
  private static final BigDecimal INFINITY = new BigDecimal("9.9E37");

  private DecimalText() {}

  /** The number that the text writes, exactly. */
  static BigDecimal parse(String text) throws Unreadable {
    Matcher form = FORM.matcher(text.strip());
    if (!form.matches()) {
      throw new Unreadable(shown(text) + " is no decimal number");
    }
    String digits = form.group("digits").replace(',', '.');
    if (digits.replaceFirst("^[0.]+", "").replace(".", "").length() > MOST_DIGITS) {
      throw new Unreadable(shown(text) + " has more than " + MOST_DIGITS + " digits");
    }
    BigDecimal size = new BigDecimal(digits).scaleByPowerOfTen(exponent(text, form));
    BigDecimal number = form.group("sign").equals("-") ? size.negate() : size;
    if (number.compareTo(NOT_A_NUMBER) == 0) {
      throw new Unreadable(shown(text) + " means not a number");
    }
    if (size.compareTo(INFINITY) == 0) {
      throw new Unreadable(shown(text) + " means infinity");
    }
    return number;
  }

  private static int exponent(String text, Matcher form) throws Unreadable {
    String exponent = form.group("exponent");
    if (exponent == null) {
      return 0;
    }
    String size = exponent.replaceFirst("^[+-]?0*", "");
    if (size.length() > 5 || !size.isEmpty() && Integer.parseInt(size) > MOST_EXPONENT) {
      throw new Unreadable(shown(text) + " has an exponent beyond " + MOST_EXPONENT);
    }
    return Integer.parseInt(exponent);
  }

  private static String shown(String text) {
    return '"' + OneLine.of(text) + '"';
  }
}
