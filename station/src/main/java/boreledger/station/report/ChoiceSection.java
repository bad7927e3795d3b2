package boreledger.station.report;

import boreledger.station.drawing.LengthFormat;
import boreledger.station.results.JobResults.KindChoice;
import boreledger.station.results.RingChoice;
import boreledger.station.results.RingChoice.Place;
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

  List<Piece> pieces(List<KindChoice> kinds) {
    List<Piece> pieces = new ArrayList<>();
    if (!kinds.isEmpty()) {
      pieces.addAll(type.heading("Which ring for which bore"));
    }
    for (KindChoice kind : kinds) {
      RingChoice choice = kind.choice();
      pieces.addAll(type.subheading(kind.ring() + " rings"));
      pieces.addAll(type.table(COLUMNS, choice.assignment().stream().map(this::row).toList()));
      pieces.addAll(type.paragraph(sum(choice)));
      choice.without().forEach(words -> pieces.addAll(type.caution(words + ".")));
      choice.spare().forEach(words -> pieces.addAll(type.paragraph(words + ".")));
    }
    return pieces;
  }

  private List<String> row(Place place) {
    int decimals = lengths.usualDecimals();
    return List.of(
        place.bore(),
        place.ring(),
        lengths.number(place.gapMm(), decimals),
        lengths.number(place.removeMm(), decimals));
  }

  private String sum(RingChoice choice) {
    int decimals = lengths.usualDecimals();
    String saved =
        choice.savedMm() == null
            ? "as gauged, fewer bores could be filled."
            : lengths.length(choice.savedMm(), decimals) + " less than with the rings as gauged.";
    return "To file in all: " + lengths.length(choice.totalRemoveMm(), decimals) + ", " + saved;
  }
}
