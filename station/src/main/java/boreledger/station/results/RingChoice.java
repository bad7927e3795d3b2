package boreledger.station.results;

import boreledger.calc.match.BoreToFill;
import boreledger.calc.match.EmptyBore;
import boreledger.calc.match.Placing;
import boreledger.calc.match.RingMatch;
import boreledger.calc.match.RingToPlace;
import boreledger.calc.match.SpareRing;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which ring suits which bore best.
 *
 * @param assignment the rings placed, in the order of the bores
 * @param totalRemoveMm what they need filed off in all
 * @param asListedRemoveMm what the rings would need as listed, each in the bore of its own place
 * @param savedMm the difference; null when the rings as listed fill fewer bores
 * @param without why a bore goes without, in words
 * @param spare why a ring goes nowhere, in words
 */
public record RingChoice(
    List<Place> assignment,
    double totalRemoveMm,
    double asListedRemoveMm,
    Double savedMm,
    List<String> without,
    List<String> spare) {
  /** Takes copies of the lists. */
  public RingChoice {
    assignment = List.copyOf(assignment);
    without = List.copyOf(without);
    spare = List.copyOf(spare);
  }

  /** A ring in a bore. */
  public record Place(String ring, String bore, double gapMm, double removeMm) {}

  /** A choice as the computation found it. */
  public static RingChoice of(RingMatch match) {
    return new RingChoice(
        match.placings().stream().map(RingChoice::place).toList(),
        match.totalRemoveMm(),
        match.asListed().totalRemoveMm(),
        match.savedMm(),
        match.emptyBores().stream().map(RingChoice::words).toList(),
        match.spareRings().stream().map(RingChoice::words).toList());
  }

  /** The choice in plain words. */
  public String words() {
    Stream<String> places =
        assignment.stream()
            .map(
                each ->
                    format(
                        "%s in %s: gap %.4f mm, file %.4f mm off",
                        each.ring(), each.bore(), each.gapMm(), each.removeMm()));
    String sum =
        savedMm == null
            ? format(
                "%.4f mm to file in all; as listed, fewer bores could be filled", totalRemoveMm)
            : format("%.4f mm to file in all, %.4f mm less than as listed", totalRemoveMm, savedMm);
    return Stream.of(places, Stream.of(sum), without.stream(), spare.stream())
        .flatMap(lines -> lines)
        .collect(Collectors.joining(System.lineSeparator()));
  }

  private static Place place(Placing placing) {
    return new Place(
        placing.ring().name(), placing.bore().name(), placing.gapMm(), placing.removeMm());
  }

  private static String words(EmptyBore bore) {
    if (bore instanceof EmptyBore.RingsNeededElsewhere elsewhere) {
      return format(
          "%s goes without: %s would do and is needed elsewhere",
          elsewhere.bore().name(), names(elsewhere.wouldDo().stream().map(RingToPlace::name)));
    }
    EmptyBore.EveryRingTooShort tooShort = (EmptyBore.EveryRingTooShort) bore;
    return format(
        "%s goes without: every ring is too short for it, the closest, %s, has %.4f mm where"
            + " %.4f mm are allowed",
        tooShort.bore().name(),
        tooShort.closest().ring().name(),
        tooShort.closest().gapMm(),
        tooShort.bore().maxMm());
  }

  private static String words(SpareRing ring) {
    if (ring instanceof SpareRing.NotNeeded notNeeded) {
      return format(
          "%s is spare: it would do in %s",
          notNeeded.ring().name(), names(notNeeded.wouldDo().stream().map(BoreToFill::name)));
    }
    SpareRing.FitsNowhere nowhere = (SpareRing.FitsNowhere) ring;
    return format(
        "%s fits nowhere: its gap is %.4f mm even in %s, where %.4f mm are allowed",
        nowhere.ring().name(),
        nowhere.closest().gapMm(),
        nowhere.closest().bore().name(),
        nowhere.closest().bore().maxMm());
  }

  private static String names(Stream<String> names) {
    return names.collect(Collectors.joining(", "));
  }

  private static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
