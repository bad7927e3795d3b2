package boreledger.calc.match;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * The best way to put rings in bores (linear assignment).
 *
 * <ul>
 *   <li>Gap: the bore's perimeter less the ring's length. To remove: target less gap, never below
 *       zero. A gap above the bore's largest is not allowed.
 *   <li>Best: the most bores filled; then the least removed in all; then the least excess of gaps
 *       over their targets in all; then the listed order: the first bore has the ring listed as
 *       early as can be, going without being last, then the second bore, and so on.
 *   <li>More rings than bores, or fewer: the rest is told with the reason.
 * </ul>
 *
 * @param placings the rings placed, in the order of the bores
 * @param totalRemoveMm what they need filed off in all, in millimetres
 * @param emptyBores the bores that go without, in listed order
 * @param spareRings the rings that go nowhere, in listed order
 * @param asListed the rings as listed, to compare with
 */
public record RingMatch(
    List<Placing> placings,
    double totalRemoveMm,
    List<EmptyBore> emptyBores,
    List<SpareRing> spareRings,
    AsListed asListed) {

  /** Takes copies of the lists. */
  public RingMatch {
    placings = List.copyOf(placings);
    emptyBores = List.copyOf(emptyBores);
    spareRings = List.copyOf(spareRings);
  }

  /**
   * Matches rings to bores.
   *
   * @param rings one or more, named differently
   * @param bores one or more, named differently
   * @throws ImpossibleInput when there are none, or two have one name
   */
  public static RingMatch of(List<RingToPlace> rings, List<BoreToFill> bores) {
    Require.atLeast(1, rings.size(), "rings");
    Require.atLeast(1, bores.size(), "bores");
    refuseSameNames("rings", rings, RingToPlace::name);
    refuseSameNames("bores", bores, BoreToFill::name);
    Placing[][] all = new Placing[bores.size()][rings.size()];
    for (int bore = 0; bore < bores.size(); bore++) {
      for (int ring = 0; ring < rings.size(); ring++) {
        all[bore][ring] = Placing.of(rings.get(ring), bores.get(bore));
      }
    }
    int[] ringOf = LeastCost.columns(new PlacingCosts(all).matrix());
    List<Placing> placings = new ArrayList<>();
    for (int bore = 0; bore < bores.size(); bore++) {
      if (ringOf[bore] < rings.size()) {
        placings.add(all[bore][ringOf[bore]]);
      }
    }
    return new RingMatch(
        placings,
        totalRemoveMm(placings),
        emptyBores(rings, bores, placings),
        spareRings(rings, bores, placings),
        AsListed.of(rings, bores));
  }

  /**
   * What is saved against the rings as listed, in millimetres; null when those fill fewer bores, so
   * that the sums cannot be compared.
   */
  public Double savedMm() {
    int filledAsListed = asListed.placings().size() - asListed.notAllowed().size();
    return filledAsListed < placings.size()
        ? null
        : Picometres.toMm(totalRemovePm(asListed.placings()) - totalRemovePm(placings));
  }

  static double totalRemoveMm(List<Placing> placings) {
    return Picometres.toMm(totalRemovePm(placings));
  }

  private static long totalRemovePm(List<Placing> placings) {
    return placings.stream().mapToLong(Placing::removePm).reduce(0, Math::addExact);
  }

  private static List<EmptyBore> emptyBores(
      List<RingToPlace> rings, List<BoreToFill> bores, List<Placing> placings) {
    List<BoreToFill> filled = placings.stream().map(Placing::bore).toList();
    return bores.stream()
        .filter(bore -> !filled.contains(bore))
        .map(bore -> emptyBore(bore, rings.stream().map(ring -> Placing.of(ring, bore)).toList()))
        .toList();
  }

  private static EmptyBore emptyBore(BoreToFill bore, List<Placing> tried) {
    List<RingToPlace> wouldDo = tried.stream().filter(Placing::allowed).map(Placing::ring).toList();
    return wouldDo.isEmpty()
        ? new EmptyBore.EveryRingTooShort(bore, closest(tried))
        : new EmptyBore.RingsNeededElsewhere(bore, wouldDo);
  }

  private static List<SpareRing> spareRings(
      List<RingToPlace> rings, List<BoreToFill> bores, List<Placing> placings) {
    List<RingToPlace> placed = placings.stream().map(Placing::ring).toList();
    return rings.stream()
        .filter(ring -> !placed.contains(ring))
        .map(ring -> spareRing(ring, bores.stream().map(bore -> Placing.of(ring, bore)).toList()))
        .toList();
  }

  private static SpareRing spareRing(RingToPlace ring, List<Placing> tried) {
    List<BoreToFill> wouldDo = tried.stream().filter(Placing::allowed).map(Placing::bore).toList();
    return wouldDo.isEmpty()
        ? new SpareRing.FitsNowhere(ring, closest(tried))
        : new SpareRing.NotNeeded(ring, wouldDo);
  }

  private static Placing closest(List<Placing> tooWide) {
    return tooWide.stream().min(Comparator.comparingLong(Placing::aboveMaxPm)).orElseThrow();
  }

  private static <T> void refuseSameNames(String what, List<T> all, Function<T, String> name) {
    List<String> names = all.stream().map(name).toList();
    for (int i = 0; i < names.size(); i++) {
      if (names.indexOf(names.get(i)) < i) {
        throw new ImpossibleInput("two " + what + " are named " + names.get(i));
      }
    }
  }
}
