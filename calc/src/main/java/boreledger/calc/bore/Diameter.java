package boreledger.calc.bore;

import boreledger.calc.input.Require;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Estimate;

/**
 * A bore's diameter at one position, with the reading it came from.
 *
 * @param gauging what held for its session
 * @param reading the reading
 */
public record Diameter(BoreGauging gauging, BoreReading reading) {
  /**
   * Checks that there is a bore at all.
   *
   * @throws boreledger.calc.input.ImpossibleInput when the diameter comes out at zero or less
   */
  public Diameter {
    Require.positive("diameter", gauging.diameterAtReferenceMm(reading), "mm");
  }

  /** The diameter at 20 degrees Celsius in millimetres. */
  public double diameterMm() {
    return gauging.diameterAtReferenceMm(reading);
  }

  /** Depth below the deck in millimetres. */
  public double depthMm() {
    return reading.depthMm();
  }

  /** The direction's name. */
  public String axis() {
    return reading.axis();
  }

  /** The diameter at 20 degrees Celsius with the budget of a size. */
  public Estimate size() {
    return WeightedDiameters.of(this).estimate();
  }

  /** The budget of the size. */
  public Budget budget() {
    return size().budget();
  }

  /** This diameter less another, with the budget of a difference. */
  public Estimate minus(Diameter other) {
    return WeightedDiameters.of(this).minus(WeightedDiameters.of(other)).estimate();
  }
}
