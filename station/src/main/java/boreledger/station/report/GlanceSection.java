package boreledger.station.report;

import boreledger.station.drawing.BoreState;
import boreledger.station.results.CheckResult;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.wording.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Every cylinder's verdicts in one table, and how many cautions there are. */
final class GlanceSection {
  private static final List<Column> COLUMNS =
      List.of(
          Column.words("Cylinder", 0.8),
          Column.words("Bore; the engine maker's data decide", 5.4),
          Column.words("Rings; their maker's data decide", 4.2));

  private final SheetFacts facts;
  private final Typesetter type;

  GlanceSection(SheetFacts facts, Typesetter type) {
    this.facts = facts;
    this.type = type;
  }

  List<Piece> pieces() {
    SheetCautions cautions = new SheetCautions(facts.results(), facts.lengths());
    int count = cautions.all().size();
    String counted =
        count == 0
            ? "No caution arose from these readings; those that hold for every job stand at the end."
            : count
                + (count == 1 ? " caution arose" : " cautions arose")
                + " from these readings; they stand beside their numbers and together at the end.";
    List<Piece> pieces = new ArrayList<>(type.heading("At a glance"));
    pieces.addAll(
        type.table(COLUMNS, facts.results().cylinders().stream().map(this::row).toList()));
    pieces.addAll(type.paragraph(counted + " " + SheetCautions.STANDING.get(0)));
    pieces.add(Piece.space(4));
    cautions.ofJob().forEach(caution -> pieces.addAll(type.caution(caution)));
    return pieces;
  }

  private List<String> row(CylinderResults cylinder) {
    String rings =
        cylinder.rings().stream()
            .map(ring -> new RingWords(facts.lengths(), ring))
            .map(words -> words.name() + ": " + words.verdict())
            .collect(Collectors.joining("\n"));
    return List.of(Integer.toString(cylinder.cylinder()), bore(cylinder), rings);
  }

  /** The state, then the checks that made it so; a bore within its limits shows its extremes. */
  private String bore(CylinderResults cylinder) {
    BoreState state = BoreState.of(cylinder.bore());
    List<CheckResult> checks = cylinder.bore().checks();
    List<CheckResult> grave =
        checks.stream()
            .filter(check -> check.state() != null && !check.state().equals("within"))
            .toList();
    List<CheckResult> told = grave.isEmpty() ? checks : grave;
    String clauses =
        told.stream()
            .filter(check -> !grave.isEmpty() || !check.check().equals("wear-limit"))
            .map(check -> new CheckWords(facts.lengths(), check).clause())
            .collect(Collectors.joining("\n"));
    String words = Vocabulary.ENGLISH.say(state.phrase());
    return words + (clauses.isEmpty() ? "" : "\n" + clauses);
  }
}
