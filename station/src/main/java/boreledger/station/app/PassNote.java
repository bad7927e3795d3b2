package boreledger.station.app;

import java.math.BigDecimal;

/**
 * A pass with the file that is to be noted.
 *
 * @param jobName the job; null for the only one in the ledger
 * @param ring the ring's name
 * @param turns turns of the crank or strokes
 * @param beforeMm the gap read before it, in as many decimals as were read
 * @param afterMm the gap read after it
 * @param by the person
 */
public record PassNote(
    String jobName,
    int cylinder,
    String ring,
    int turns,
    BigDecimal beforeMm,
    BigDecimal afterMm,
    String by) {}
