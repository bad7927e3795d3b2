package boreledger.calc.ring;

import boreledger.calc.bore.Perimeter;
import boreledger.calc.uncertainty.Estimate;

/**
 * How a ring's gap changes when the ring is moved along the bore: by the change of the perimeter,
 * because the ring's length does not change.
 *
 * @param from where it comes from
 * @param to where it goes
 * @param ring the ring
 */
public record GapChange(Perimeter from, Perimeter to, Ring ring) {
  /** The change of the gap at 20 degrees Celsius; above zero when it opens. */
  public Estimate estimate() {
    Estimate change = to.minus(from);
    double boreMm = from.lengthMm() / Math.PI;
    return new Estimate(
        change.valueMm(), change.budget().with(ring.fibre(change.valueMm(), boreMm)));
  }
}
