package boreledger.station.results;

import boreledger.calc.match.BoreToFill;
import boreledger.calc.match.EmptyBore;
import boreledger.calc.match.Placing;
import boreledger.calc.match.RingMatch;
import boreledger.calc.match.RingToPlace;
import boreledger.calc.match.SpareRing;
import boreledger.station.wording.Part;
import boreledger.station.wording.Part.Length;
import boreledger.station.wording.Part.Recorded;
import boreledger.station.wording.Part.Several;
import boreledger.station.wording.Phrase;
import boreledger.station.wording.Statement;
import boreledger.station.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which ring suits which bore best.
 *
 * @param assignment the rings placed, in the order of the bores
 * @param totalRemoveMm what they need filed off in all
 * @param asListedRemoveMm what the rings would need as listed, each in the bore of its own place
 * @param savedMm the difference; null when the rings as listed fill fewer bores
 * @param without why a bore goes without
 * @param spare why a ring goes nowhere
 */
public record RingChoice(
    List<Place> assignment,
    double totalRemoveMm,
    double asListedRemoveMm,
    Double savedMm,
    List<Statement> without,
    List<Statement> spare) {
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
        match.emptyBores().stream().map(RingChoice::without).toList(),
        match.spareRings().stream().map(RingChoice::spare).toList());
  }

  /** The choice in plain words, a line each. */
  public String words() {
    return String.join(System.lineSeparator(), Wording.PLAIN.each(statements()));
  }

  /** The rings placed, what they need in all, then what is left over. */
  public List<Statement> statements() {
    List<Statement> all = new ArrayList<>();
    for (Place each : assignment) {
      all.add(
          Phrase.RING_PLACED.of(
              new Recorded(each.ring()),
              new Recorded(each.bore()),
              new Length(each.gapMm()),
              new Length(each.removeMm())));
    }
    Length total = new Length(totalRemoveMm);
    all.add(
        savedMm == null
            ? Phrase.MORE_BORES_FILLED.of(total)
            : Phrase.FILING_SAVED.of(total, new Length(savedMm)));
    all.addAll(without);
    all.addAll(spare);
    return all;
  }

  private static Place place(Placing placing) {
    return new Place(
        placing.ring().name(), placing.bore().name(), placing.gapMm(), placing.removeMm());
  }

  private static Statement without(EmptyBore bore) {
    Recorded name = new Recorded(bore.bore().name());
    if (bore instanceof EmptyBore.RingsNeededElsewhere elsewhere) {
      return Phrase.BORE_NEEDS_TAKEN_RING.of(
          name, names(elsewhere.wouldDo().stream().map(RingToPlace::name)));
    }
    EmptyBore.EveryRingTooShort tooShort = (EmptyBore.EveryRingTooShort) bore;
    return Phrase.BORE_TOO_LARGE_FOR_RINGS.of(
        name,
        new Recorded(tooShort.closest().ring().name()),
        new Length(tooShort.closest().gapMm()),
        new Length(tooShort.bore().maxMm()));
  }

  private static Statement spare(SpareRing ring) {
    Recorded name = new Recorded(ring.ring().name());
    if (ring instanceof SpareRing.NotNeeded notNeeded) {
      return Phrase.RING_NOT_NEEDED.of(
          name, names(notNeeded.wouldDo().stream().map(BoreToFill::name)));
    }
    SpareRing.FitsNowhere nowhere = (SpareRing.FitsNowhere) ring;
    return Phrase.RING_FITS_NOWHERE.of(
        name,
        new Length(nowhere.closest().gapMm()),
        new Recorded(nowhere.closest().bore().name()),
        new Length(nowhere.closest().bore().maxMm()));
  }

  private static Several names(Stream<String> names) {
    return new Several(names.<Part>map(Recorded::new).toList());
  }
}
