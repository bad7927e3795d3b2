package boreledger.station.truth;

import java.math.BigDecimal;

/**
 * What the gauge showed on the setting ring, as deviation, at the opening and the closing check.
 *
 * @param closingTs null when there was no closing check, and then closingMm is null too
 */
public record Zero(
    BigDecimal openingTs, BigDecimal openingMm, BigDecimal closingTs, BigDecimal closingMm) {

  /** The zero of a moment: straight between the checks, the opening one without a closing one. */
  public BigDecimal atMm(BigDecimal tS) {
    if (closingTs == null) {
      return openingMm;
    }
    BigDecimal way = tS.subtract(openingTs);
    BigDecimal rise = closingMm.subtract(openingMm);
    return openingMm.add(
        rise.multiply(way).divide(closingTs.subtract(openingTs), Bench.DIGITS), Bench.DIGITS);
  }
}
