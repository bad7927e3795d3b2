package boreledger.station.report;

import boreledger.station.results.JobResults.KindChoice;
import boreledger.station.results.RingChoice;
import boreledger.station.results.RingChoice.Place;
import boreledger.station.wording.LengthFormat;
import boreledger.station.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** Which of the gauged rings suits which bore. */
final class ChoiceSection {
  private static final List<Column> COLUMNS =
      List.of(
          Column.words("Bore", 2),
          Column.words("Ring", 4),
          Column.numbers("Gap at the tightest point", 3),
          Column.numbers("To file off", 2));

  private final LengthFormat lengths;
  private final Typesetter type;

  ChoiceSection(LengthFormat lengths, Typesetter type) {
    this.lengths = lengths;
    this.type = type;
  }

  /** A part for each kind of ring; the first one has the heading. */
  List<List<Piece>> parts(List<KindChoice> kinds) {
    List<List<Piece>> parts = new ArrayList<>();
    for (KindChoice kind : kinds) {
      RingChoice choice = kind.choice();
      List<Piece> pieces = new ArrayList<>();
      if (parts.isEmpty()) {
        pieces.addAll(type.heading("Which ring for which bore"));
      }
      pieces.addAll(type.subheading(kind.ring() + " rings"));
      pieces.addAll(type.table(COLUMNS, choice.assignment().stream().map(this::row).toList()));
      pieces.addAll(type.paragraph(sum(choice)));
      Wording.PLAIN
          .each(choice.without())
          .forEach(words -> pieces.addAll(type.caution(words + ".")));
      Wording.PLAIN
          .each(choice.spare())
          .forEach(words -> pieces.addAll(type.paragraph(words + ".")));
      parts.add(pieces);
    }
    return parts;
  }

  private List<String> row(Place place) {
    int decimals = lengths.usualDecimals();
    return List.of(
        place.bore(),
        place.ring(),
        lengths.number(place.gapMm(), decimals),
        lengths.number(place.removeMm(), decimals));
  }

  private String saved(RingChoice choice, int decimals) {
    if (choice.savedMm() == null) {
      return "as gauged, fewer bores could be filled.";
    } else if (choice.savedMm() == 0) {
      return "the same as with each ring where it was gauged.";
    }
    return lengths.length(choice.savedMm(), decimals)
        + " less than with each ring where it was gauged.";
  }

  private String sum(RingChoice choice) {
    int decimals = lengths.usualDecimals();
    return "To file in all: "
        + lengths.length(choice.totalRemoveMm(), decimals)
        + ", "
        + saved(choice, decimals);
  }
}
