package boreledger.drivers.learn;

import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;

/**
 * What a gauge's display showed, such as 5.000 mm.
 *
 * @param number the number as it was read, with its trailing zeros
 * @param unit its unit
 */
public record ShownValue(BigDecimal number, LengthUnit unit) {
  private static final int FINE_MM_DECIMALS = 3;
  private static final int FINE_IN_DECIMALS = 4;
  private static final BigDecimal ROUND_WITHIN_MM = new BigDecimal("0.003");

  /** The value in millimetres, exactly. */
  public BigDecimal mm() {
    return unit.toMm(number);
  }

  /**
   * How far the gauge's own value may lie from what its display rounded it to: half the last digit.
   * None for a number of few digits, which was shortened by hand rather than rounded by a display.
   */
  BigDecimal roundingMm() {
    int fine = unit == LengthUnit.MM ? FINE_MM_DECIMALS : FINE_IN_DECIMALS;
    return number.scale() < fine
        ? BigDecimal.ZERO
        : unit.toMm(BigDecimal.valueOf(5, number.scale() + 1));
  }

  /** The step of its last digit. */
  BigDecimal stepMm() {
    return unit.toMm(number.ulp());
  }

  /** Whether a value is this one, as far as the display's digits tell. */
  boolean isShownFor(BigDecimal valueMm, BigDecimal stepMm) {
    BigDecimal allowedMm = roundingMm().max(stepMm.multiply(new BigDecimal("0.5")));
    return valueMm.subtract(mm()).abs().compareTo(allowedMm) <= 0;
  }

  /** Whether it is a whole number of tenths of an inch, as its display rounds it, and not zero. */
  boolean isRoundInInches() {
    BigDecimal tenthMm = new BigDecimal("2.54");
    BigDecimal beyondMm = mm().abs().remainder(tenthMm);
    BigDecimal offMm = beyondMm.min(tenthMm.subtract(beyondMm));
    return mm().abs().compareTo(BigDecimal.ONE) > 0 && offMm.compareTo(ROUND_WITHIN_MM) <= 0;
  }
}
