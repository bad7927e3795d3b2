package boreledger.station.truth;

import java.math.BigDecimal;

/**
 * One reading as the gauge sent it.
 *
 * @param tS time of its last byte, seconds since the start
 * @param mm exactly what the sent text means, in millimetres
 * @param position null on the setting ring
 */
public record BoreReading(BigDecimal tS, BigDecimal mm, Position position) {

  /** Whether the gauge sat on the setting ring. */
  public boolean onSettingRing() {
    return position == null;
  }
}
