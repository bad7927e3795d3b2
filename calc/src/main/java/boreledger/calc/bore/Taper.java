package boreledger.calc.bore;

import boreledger.calc.uncertainty.Estimate;

/**
 * How much a bore's diameter changes along one axis, over two or more depths.
 *
 * @param axis the direction's name
 * @param range the largest and the smallest diameter along it
 * @param shallowest the diameter nearest the deck
 * @param deepest the diameter farthest from the deck
 */
public record Taper(
    String axis, LargestMinusSmallest range, Diameter shallowest, Diameter deepest) {
  /** Largest minus smallest diameter, the workshop's taper; zero or more. */
  public Estimate amount() {
    return range.estimate();
  }

  /** Shallowest minus deepest diameter; above zero when the bore is wider at the top. */
  public Estimate signed() {
    return shallowest.minus(deepest);
  }
}
