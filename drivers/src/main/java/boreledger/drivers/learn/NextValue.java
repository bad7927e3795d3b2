package boreledger.drivers.learn;

import java.math.BigDecimal;

/**
 * What to show next.
 *
 * @param mm the value
 * @param words what to do and why, for a person
 */
public record NextValue(BigDecimal mm, String words) {}
