package boreledger.drivers.learn;

import java.math.BigDecimal;

/**
 * What to show next.
 *
 * @param mm the value
 * @param words what to do and why, for a person
 * @param settles what it is to settle; null when it is one more value
 */
public record NextValue(BigDecimal mm, String words, Open settles) {}
