package boreledger.station.report;

import boreledger.station.results.AdviceResult;
import boreledger.station.results.AdviceResult.CylinderAdviceResult;
import boreledger.station.wording.LengthFormat;
import boreledger.station.wording.Wording;
import java.util.ArrayList;
import java.util.List;

/** Hone or oversize, with the reasons. */
final class AdviceSection {
  private static final List<Column> COLUMNS =
      List.of(
          Column.words("Cylinder", 1),
          Column.numbers("Finished size", 1.5),
          Column.numbers("Piston clearance", 1.5),
          Column.words("Will honing alone do?", 6));

  private final AdviceResult advice;
  private final LengthFormat lengths;
  private final Typesetter type;

  /** The advice; null when it cannot be given yet. */
  AdviceSection(AdviceResult advice, LengthFormat lengths, Typesetter type) {
    this.advice = advice;
    this.lengths = lengths;
    this.type = type;
  }

  List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>(type.heading("Hone or oversize"));
    if (advice == null) {
      pieces.addAll(type.paragraph("Not known until every bore is read at every position."));
      return pieces;
    }
    pieces.addAll(type.paragraph(cure() + " The engine maker's data decide."));
    pieces.add(Piece.space(2));
    pieces.addAll(type.table(COLUMNS, advice.cylinders().stream().map(this::row).toList()));
    pieces.addAll(
        type.paragraph("Cut on its original centre, a bore worn on one side needs " + centre()));
    return pieces;
  }

  private String cure() {
    return switch (advice.cure()) {
      case "hone" -> "Hone; all cylinders keep their size.";
      case "oversize" ->
          "Bore all cylinders to the oversize of " + stated(advice.oversizeMm()) + ".";
      default -> "No listed oversize cleans every cylinder: sleeve, or take another block.";
    };
  }

  private String centre() {
    return advice.oversizeOnOriginalCentreMm() == null
        ? "more than any listed oversize."
        : "the oversize of " + stated(advice.oversizeOnOriginalCentreMm()) + ".";
  }

  private List<String> row(CylinderAdviceResult cylinder) {
    return List.of(
        Integer.toString(cylinder.cylinder()),
        lengths.number(cylinder.finishedMm(), lengths.coarseDecimals()),
        lengths.number(cylinder.clearanceMm(), lengths.coarseDecimals()),
        cylinder.reasons().isEmpty()
            ? "honing would do"
            : "no: " + String.join("; ", Wording.PLAIN.each(cylinder.reasons())));
  }

  private String stated(double mm) {
    return lengths.stated(mm) + " " + lengths.symbol();
  }
}
