package boreledger.drivers.learn;

import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number within a line of text, with its sign and unit, such as {@code - 1.250 mm}.
 *
 * @param before the text before the number, its sign and its unit
 * @param sign {@code +}, {@code -} or empty
 * @param core the number without sign
 * @param signAfter whether the sign stands behind the number
 * @param unit the unit word; empty when there is none
 * @param unitFirst whether the unit word stands before the number
 * @param after the text behind
 */
record TextToken(
    String before,
    String sign,
    String core,
    boolean signAfter,
    String unit,
    boolean unitFirst,
    String after) {
  private static final String WORD = "(?i)(mm|inch|in|\")";
  private static final Pattern SIGN_BEFORE = Pattern.compile("([+-]) *$");
  private static final Pattern SIGN_AFTER = Pattern.compile("^([+-])(?![0-9.,])");
  private static final Pattern UNIT_BEFORE = Pattern.compile("(?<![A-Za-z])" + WORD + " *$");
  private static final Pattern UNIT_AFTER = Pattern.compile("^ *" + WORD + "(?![A-Za-z])");

  /** Every number in a line, from left to right. */
  static List<TextToken> in(String line, char point) {
    String exponent = "(?:[eE][+-]?\\d+)?";
    // A whole number is not the half of one with a point or a comma.
    String whole = "(?<!\\d|\\d[.,])\\d++(?![.,]\\d)" + exponent;
    String form = "\\d*[" + point + "]\\d+" + exponent + "|" + whole;
    Matcher core = Pattern.compile(form).matcher(line);
    List<TextToken> tokens = new ArrayList<>();
    while (core.find()) {
      tokens.add(around(line.substring(0, core.start()), core.group(), line.substring(core.end())));
    }
    return tokens;
  }

  private static TextToken around(String left, String core, String right) {
    Matcher sign = SIGN_BEFORE.matcher(left);
    boolean signed = sign.find();
    Matcher signBehind = SIGN_AFTER.matcher(right);
    boolean signedBehind = !signed && signBehind.find();
    String before = signed ? left.substring(0, sign.start()) : left;
    String after = signedBehind ? right.substring(1) : right;
    Matcher unitBehind = UNIT_AFTER.matcher(after);
    Matcher unitAhead = UNIT_BEFORE.matcher(before);
    boolean behind = unitBehind.find();
    boolean ahead = !behind && unitAhead.find();
    String unit = behind ? unitBehind.group(1) : ahead ? unitAhead.group(1) : "";
    return new TextToken(
        ahead ? before.substring(0, unitAhead.start()) : before,
        signed ? sign.group(1) : signedBehind ? signBehind.group(1) : "",
        core,
        signedBehind,
        unit,
        ahead,
        behind ? after.substring(unitBehind.end()) : after);
  }

  /** The same with a sign, and another text before it. */
  TextToken withBefore(String text, String newSign) {
    return new TextToken(text, newSign, core, false, unit, unitFirst, after);
  }

  /** The same with a sign, and another text behind it. */
  TextToken withAfter(String text, String newSign) {
    return new TextToken(before, newSign, core, false, unit, unitFirst, text);
  }

  /** The number with its sign, in whatever unit. */
  BigDecimal number() {
    BigDecimal size = new BigDecimal(core.replace(',', '.'));
    return sign.equals("-") ? size.negate() : size;
  }

  /** Whether a sign stands before the number. */
  boolean signAhead() {
    return !signAfter && !sign.isEmpty();
  }

  /** What stands right behind the number in the place of a sign: one, a blank, or nothing. */
  String mark() {
    return signAfter ? sign : after.startsWith(" ") && !unitBehind() ? " " : "";
  }

  /** The text behind, without a blank in the place of a sign. */
  String afterMark() {
    return mark().equals(" ") ? after.substring(1) : after;
  }

  private boolean unitBehind() {
    return !unit.isEmpty() && !unitFirst;
  }

  /** The step of its last digit. */
  BigDecimal step() {
    return number().ulp();
  }

  /** The unit that it names, or another when it names none. */
  LengthUnit unitOr(LengthUnit unnamed) {
    if (unit.isEmpty()) {
      return unnamed;
    }
    return unit.toLowerCase(Locale.ROOT).equals("mm") ? LengthUnit.MM : LengthUnit.IN;
  }

  /** How many digits stand before its point. */
  int wholeDigits() {
    String whole = core.split("[.,eE]", 2)[0];
    return whole.length();
  }

  /** How many digits stand after its point; -1 without a point. */
  int decimals() {
    String mantissa = core.split("[eE]", 2)[0];
    int point = Math.max(mantissa.indexOf('.'), mantissa.indexOf(','));
    return point < 0 ? -1 : mantissa.length() - point - 1;
  }

  boolean hasExponent() {
    return core.matches(".*[eE].*");
  }
}
