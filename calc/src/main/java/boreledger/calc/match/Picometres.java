package boreledger.calc.match;

import boreledger.calc.input.ImpossibleInput;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths as whole numbers, whose sums and differences are exact. */
final class Picometres {
  private static final double LONGEST_MM = 1e6;
  private static final int DECIMALS = 9;

  private Picometres() {}

  /**
   * The nearest whole number of picometres to the shortest decimal that stands for a length.
   *
   * @throws ImpossibleInput when it is longer than a kilometre
   */
  static long of(String what, double lengthMm) {
    if (Math.abs(lengthMm) > LONGEST_MM) {
      throw new ImpossibleInput(what + " " + lengthMm + " mm is above " + LONGEST_MM + " mm");
    }
    return BigDecimal.valueOf(lengthMm)
        .movePointRight(DECIMALS)
        .setScale(0, RoundingMode.HALF_EVEN)
        .longValueExact();
  }

  static double toMm(long picometres) {
    return BigDecimal.valueOf(picometres, DECIMALS).doubleValue();
  }
}
