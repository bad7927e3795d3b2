package boreledger.station.truth;

import java.math.BigDecimal;

/** One end gap as the gauge sent it, at the temperature of the block. */
public record GapReading(BigDecimal tS, BigDecimal mm, int cylinder, double depthMm) {}
