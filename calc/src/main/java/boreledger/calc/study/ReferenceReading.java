package boreledger.calc.study;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;

/**
 * What the gauge read on a reference, such as 96.003 on a ring of 96.000.
 *
 * @param reference the reference's certified value; finite
 * @param value the reading, in the same unit; finite
 */
public record ReferenceReading(double reference, double value) {
  /**
   * Checks both numbers.
   *
   * @throws ImpossibleInput when one is not finite
   */
  public ReferenceReading {
    Require.finite("reference", reference, "");
    Require.finite("reading of reference " + reference, value, "");
  }

  /** Reading minus reference. */
  public double deviation() {
    return value - reference;
  }
}
