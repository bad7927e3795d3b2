package boreledger.station.report;

import java.util.ArrayList;
import java.util.List;

/** Every caution once more, all together. */
final class CautionSection {
  private final SheetFacts facts;
  private final Typesetter type;

  CautionSection(SheetFacts facts, Typesetter type) {
    this.facts = facts;
    this.type = type;
  }

  List<Piece> pieces() {
    List<Piece> pieces = new ArrayList<>(type.heading("All cautions"));
    new SheetCautions(facts.results(), facts.lengths())
        .all()
        .forEach(caution -> pieces.addAll(type.caution(caution)));
    pieces.addAll(type.subheading("For every job"));
    SheetCautions.STANDING.forEach(caution -> pieces.addAll(type.caution(caution)));
    return pieces;
  }
}
