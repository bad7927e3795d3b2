package boreledger.calc.bore;

import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Estimate;

/**
 * A bore's perimeter at one depth, at 20 degrees Celsius.
 *
 * @param depthMm below the deck in millimetres
 * @param lengthMm the perimeter in millimetres
 * @param cautiousMm the smallest it may reasonably be: below the deepest gauged depth the smaller
 *     of level and continued line, elsewhere the same as {@code lengthMm}; in millimetres
 * @param sensitivity how it depends on the diameters, to the first order: pi times their mean
 * @param reach where it lies against the gauged depths
 */
public record Perimeter(
    double depthMm,
    double lengthMm,
    double cautiousMm,
    WeightedDiameters sensitivity,
    Reach reach) {
  /** Where its uncertainty comes from. */
  public Budget budget() {
    return sensitivity.budget();
  }

  /** The perimeter with its budget. */
  public Estimate estimate() {
    return new Estimate(lengthMm, budget());
  }

  /** This perimeter less another, with the budget of a difference. */
  public Estimate minus(Perimeter other) {
    return new Estimate(lengthMm - other.lengthMm, sensitivity.minus(other.sensitivity).budget());
  }
}
