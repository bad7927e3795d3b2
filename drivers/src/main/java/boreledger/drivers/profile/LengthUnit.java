package boreledger.drivers.profile;

import java.math.BigDecimal;

/** A unit that a gauge may send. One inch is 25.4 mm exactly (ISO 31-1, and by law since 1959). */
public enum LengthUnit {
  /** Millimetre. */
  MM("mm", BigDecimal.ONE),
  /** Inch. */
  IN("in", new BigDecimal("25.4"));

  private final String symbol;
  private final BigDecimal inMm;

  LengthUnit(String symbol, BigDecimal inMm) {
    this.symbol = symbol;
    this.inMm = inMm;
  }

  /** The symbol used in files and on the wire: {@code mm} or {@code in}. */
  public String symbol() {
    return symbol;
  }

  /** A decimal number of this unit as millimetres, without rounding. */
  public BigDecimal toMm(BigDecimal number) {
    return number.multiply(inMm);
  }
}
