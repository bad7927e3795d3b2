package boreledger.calc.ring;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;

/**
 * Where a ring runs.
 *
 * @param topMm its depth below the deck at top dead centre, in millimetres; zero or more
 * @param bottomMm its depth at bottom dead centre; deeper than the top
 */
public record Travel(double topMm, double bottomMm) {
  /**
   * Checks the order.
   *
   * @throws ImpossibleInput when the bottom is not deeper than the top
   */
  public Travel {
    Require.notNegative("top of the travel", topMm, "mm");
    Require.finite("bottom of the travel", bottomMm, "mm");
    if (bottomMm <= topMm) {
      throw new ImpossibleInput(
          "bottom of the travel " + bottomMm + " mm is not below its top " + topMm + " mm");
    }
  }

  /** Whether a depth lies in the travel, ends included. */
  public boolean holds(double depthMm) {
    return depthMm >= topMm && depthMm <= bottomMm;
  }
}
