package boreledger.calc.match;

import java.util.List;

/** A ring that goes in no bore, and why. */
public sealed interface SpareRing {
  /** The ring. */
  RingToPlace ring();

  /**
   * It leaves too wide a gap in every bore.
   *
   * @param closest the bore whose largest gap it passes by the least
   */
  record FitsNowhere(RingToPlace ring, Placing closest) implements SpareRing {}

  /**
   * Some bores could take it, but all of them got another ring.
   *
   * @param wouldDo the bores that could take it, in listed order
   */
  record NotNeeded(RingToPlace ring, List<BoreToFill> wouldDo) implements SpareRing {
    /** Takes a copy of the list. */
    public NotNeeded {
      wouldDo = List.copyOf(wouldDo);
    }
  }
}
