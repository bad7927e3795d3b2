package boreledger.station.truth;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How a gauge puts a value on the line: rounded to its digit step, as text. */
@FunctionalInterface
public interface Wire {

  /** The text of a value, and exactly what that text means. */
  record Sent(String frame, BigDecimal meansMm) {}

  /** Rounds a length and writes it. */
  Sent send(double mm);

  /** A sign, decimals in millimetres, carriage return and line feed. */
  static Wire signedMm(int decimals) {
    return mm -> {
      BigDecimal value = rounded(mm, decimals);
      return new Sent(signed(value) + "\r\n", value);
    };
  }

  /**
   * A gauge that reads size: it is asked to show a deviation and sends the size that goes with it.
   *
   * @param settingNowMm size of the setting ring at its temperature
   */
  static Wire sizeMm(int decimals, BigDecimal settingNowMm) {
    return mm -> {
      BigDecimal size = rounded(mm + settingNowMm.doubleValue(), decimals);
      return new Sent(signed(size) + "\r\n", size.subtract(settingNowMm));
    };
  }

  /** A sign, decimals in millimetres, the unit, carriage return and line feed. */
  static Wire signedMmWithUnit(int decimals) {
    return mm -> {
      BigDecimal value = rounded(mm, decimals);
      return new Sent(signed(value) + " mm\r\n", value);
    };
  }

  /** Inches in steps of 0.00005, with the unit behind them. */
  static Wire signedInch() {
    BigDecimal step = new BigDecimal("0.00005");
    return mm -> {
      BigDecimal inches = BigDecimal.valueOf(mm / 25.4).divide(step, 0, RoundingMode.HALF_EVEN);
      BigDecimal value = inches.multiply(step);
      return new Sent(signed(value) + " in\r\n", value.multiply(new BigDecimal("25.4")));
    };
  }

  /** Ten bytes: D, sign, two digits, comma, four digits, carriage return. */
  static Wire fixedComma() {
    return mm -> {
      BigDecimal value = rounded(mm, 4);
      String digits = value.abs().toPlainString().replace('.', ',');
      String sign = value.signum() < 0 ? "-" : "+";
      return new Sent("D" + sign + "0".repeat(7 - digits.length()) + digits + "\r", value);
    };
  }

  /** A size without sign in steps of 0.005 mm, with the unit behind it. */
  static Wire leafMm() {
    BigDecimal step = new BigDecimal("0.005");
    return mm -> {
      BigDecimal value =
          BigDecimal.valueOf(mm).divide(step, 0, RoundingMode.HALF_EVEN).multiply(step);
      return new Sent(value.toPlainString() + " mm\r\n", value);
    };
  }

  private static BigDecimal rounded(double mm, int decimals) {
    return BigDecimal.valueOf(mm).setScale(decimals, RoundingMode.HALF_EVEN);
  }

  private static String signed(BigDecimal value) {
    return (value.signum() < 0 ? "-" : "+") + value.abs().toPlainString();
  }
}
