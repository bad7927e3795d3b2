package boreledger.calc.match;

import java.util.List;

/** A bore that goes without a ring, and why. */
public sealed interface EmptyBore {
  /** The bore. */
  BoreToFill bore();

  /**
   * Every ring leaves too wide a gap in it.
   *
   * @param closest the ring that leaves the smallest gap
   */
  record EveryRingTooShort(BoreToFill bore, Placing closest) implements EmptyBore {}

  /**
   * Some rings would do, but all of them are in other bores and no exchange fills more bores.
   *
   * @param wouldDo the rings that would do, in listed order
   */
  record RingsNeededElsewhere(BoreToFill bore, List<RingToPlace> wouldDo) implements EmptyBore {
    /** Takes a copy of the list. */
    public RingsNeededElsewhere {
      wouldDo = List.copyOf(wouldDo);
    }
  }
}
