package boreledger.drivers.learn;

import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;

/**
 * What an invented gauge measures at one moment.
 *
 * @param counts whole steps
 * @param step the size of a step in {@code unit}
 * @param sequence how many frames the gauge has sent before this one
 * @param noise a number from 0 to 255 for bytes that mean nothing
 */
record Reading(long counts, BigDecimal step, LengthUnit unit, int sequence, int noise) {
  /** The value in its unit, exactly. */
  BigDecimal number() {
    return step.multiply(BigDecimal.valueOf(counts));
  }

  /** The value that a decoder has to find. */
  double valueMm() {
    return unit.toMm(number()).doubleValue() + 0.0;
  }

  boolean isNegative() {
    return counts < 0;
  }

  boolean isInch() {
    return unit == LengthUnit.IN;
  }

  long magnitude() {
    return Math.abs(counts);
  }

  Reading sent(int newSequence, int newNoise) {
    return new Reading(counts, step, unit, newSequence, newNoise);
  }
}
