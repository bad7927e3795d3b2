package boreledger.calc.bore;

import boreledger.calc.uncertainty.Estimate;
import java.util.Comparator;
import java.util.List;

/**
 * The range of two or more diameters. Of equal ones two different readings are kept, so that a
 * range of zero still has its uncertainty. A range of scattering readings of the same size comes
 * out too large, by 1.13 standard deviations for two readings and 1.69 for three; it is shown as it
 * is.
 *
 * @param largest the largest diameter
 * @param smallest the smallest
 */
public record LargestMinusSmallest(Diameter largest, Diameter smallest) {
  static LargestMinusSmallest of(List<Diameter> diameters) {
    List<Diameter> rising =
        diameters.stream().sorted(Comparator.comparingDouble(Diameter::diameterMm)).toList();
    return new LargestMinusSmallest(rising.get(rising.size() - 1), rising.get(0));
  }

  /** The range with the budget of a difference. */
  public Estimate estimate() {
    return largest.minus(smallest);
  }
}
