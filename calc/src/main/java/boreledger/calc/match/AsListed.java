package boreledger.calc.match;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The first ring in the first bore, the second in the second and so on, to compare with.
 *
 * @param placings as many as there are both rings and bores; some may not be allowed
 * @param totalRemoveMm what they need filed off in all, in millimetres; a placing that is not
 *     allowed needs nothing off, as its gap is too wide already
 */
public record AsListed(List<Placing> placings, double totalRemoveMm) {
  /** Takes a copy of the list. */
  public AsListed {
    placings = List.copyOf(placings);
  }

  static AsListed of(List<RingToPlace> rings, List<BoreToFill> bores) {
    List<Placing> placings =
        IntStream.range(0, Math.min(rings.size(), bores.size()))
            .mapToObj(i -> Placing.of(rings.get(i), bores.get(i)))
            .toList();
    return new AsListed(placings, RingMatch.totalRemoveMm(placings));
  }

  /** The placings whose gap is above the bore's largest. */
  public List<Placing> notAllowed() {
    return placings.stream().filter(placing -> !placing.allowed()).toList();
  }
}
