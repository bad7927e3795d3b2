package boreledger.calc.uncertainty;

import boreledger.calc.input.Require;

/**
 * A length with the budget of its uncertainty, such as a taper of 0.031 mm.
 *
 * @param valueMm the best estimate in millimetres; finite
 * @param budget where its uncertainty comes from
 */
public record Estimate(double valueMm, Budget budget) {
  /** Checks that the value is a number. */
  public Estimate {
    Require.finite("value", valueMm, "mm");
  }

  /** Its combined standard uncertainty in millimetres. */
  public double standardUncertaintyMm() {
    return budget.combinedMm();
  }

  /** Its expanded uncertainty for 95 % in millimetres. */
  public double expandedUncertaintyMm() {
    return budget.expandedMm();
  }
}
