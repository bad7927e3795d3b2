package boreledger.station.job;

/**
 * The mark of one physical ring, such as {@code top-2}.
 *
 * @param ring the kind of ring
 * @param cylinder the cylinder whose bore it is gauged in
 */
public record RingMark(String mark, String ring, int cylinder) {}
