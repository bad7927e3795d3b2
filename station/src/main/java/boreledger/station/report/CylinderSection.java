package boreledger.station.report;

import boreledger.station.drawing.BoreProfileFigure;
import boreledger.station.drawing.BoreState;
import boreledger.station.drawing.RoundnessFigure;
import boreledger.station.job.GaugingOrder;
import boreledger.station.results.BoreResults;
import boreledger.station.results.BoreResults.OutOfRoundResult;
import boreledger.station.results.BoreResults.PositionResult;
import boreledger.station.results.CheckResult;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.results.RingResults;
import boreledger.station.wording.LengthFormat;
import boreledger.station.wording.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** One cylinder: its diameters, checks and figures, then its rings. */
final class CylinderSection {
  private static final double FIGURES_HEIGHT = 178;
  private static final double PROFILE_SHARE = 0.56;
  private static final List<Column> CHECKS =
      List.of(
          Column.words("Check", 3),
          Column.numbers("Value", 2.4),
          Column.words("Limit", 2),
          Column.words("Verdict", 3.4),
          Column.words("Sure to keep it", 1.8));

  private final SheetFacts facts;
  private final Typesetter type;
  private final LengthFormat lengths;

  CylinderSection(SheetFacts facts, Typesetter type) {
    this.facts = facts;
    this.type = type;
    this.lengths = facts.lengths();
  }

  /** The bore first; each ring is a part of its own. */
  List<List<Piece>> parts(CylinderResults cylinder) {
    List<List<Piece>> parts = new ArrayList<>();
    parts.add(bore(cylinder));
    RingSection rings = new RingSection(facts, type);
    for (RingResults ring : cylinder.rings()) {
      parts.add(rings.pieces(cylinder.cylinder(), ring));
    }
    return parts;
  }

  private List<Piece> bore(CylinderResults cylinder) {
    BoreResults bore = cylinder.bore();
    BoreState state = BoreState.of(bore);
    List<Piece> pieces = new ArrayList<>();
    pieces.addAll(
        type.heading(
            "Cylinder "
                + cylinder.cylinder()
                + ", bore "
                + Vocabulary.ENGLISH.say(state.phrase())));
    List<String> cautions = new SheetCautions(facts.results(), lengths).of(bore);
    cautions.forEach(caution -> pieces.addAll(type.caution(caution)));
    if (state == BoreState.NOT_GAUGED) {
      pieces.addAll(type.paragraph(waiting()));
      return pieces;
    }
    pieces.addAll(diameters(bore));
    pieces.addAll(type.paragraph(shape(bore)));
    pieces.add(Piece.space(4));
    pieces.add(figures(cylinder));
    pieces.add(Piece.space(4));
    if (!bore.checks().isEmpty()) {
      pieces.addAll(type.table(CHECKS, bore.checks().stream().map(this::check).toList()));
    }
    return pieces;
  }

  private String waiting() {
    GaugingOrder plan = facts.job().plan();
    String depths = plan.depthsMm().stream().map(lengths::depth).collect(Collectors.joining(", "));
    return "To be gauged at "
        + depths
        + " "
        + lengths.symbol()
        + " below the deck on the axes "
        + String.join(", ", plan.axes())
        + ".";
  }

  private List<Piece> diameters(BoreResults bore) {
    List<String> axes = List.copyOf(bore.taperMm().keySet());
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words("Depth", 0.8));
    axes.forEach(axis -> columns.add(Column.numbers("Diameter, " + axis, 2)));
    columns.add(Column.numbers("Out of round", 2));
    List<List<String>> rows = new ArrayList<>();
    for (OutOfRoundResult round : bore.outOfRoundMm()) {
      List<String> row = new ArrayList<>();
      row.add(lengths.depth(round.depthMm()));
      axes.forEach(axis -> row.add(diameter(bore, round.depthMm(), axis)));
      row.add(lengths.number(round.valueMm(), round.expandedUncertaintyMm()));
      rows.add(row);
    }
    List<String> taper = new ArrayList<>(List.of("Taper"));
    axes.forEach(axis -> taper.add(lengths.number(bore.taperMm().get(axis), decimals(bore))));
    taper.add("");
    rows.add(taper);
    return type.table(columns, rows);
  }

  private String diameter(BoreResults bore, double depthMm, String axis) {
    return bore.positions().stream()
        .filter(each -> each.depthMm() == depthMm && each.axis().equals(axis))
        .findFirst()
        .map(each -> lengths.number(each.diameterMm(), each.expandedUncertaintyMm()))
        .orElse("-");
  }

  /** The decimals of this bore's diameters. */
  private int decimals(BoreResults bore) {
    return lengths.decimals(
        bore.positions().stream()
            .map(PositionResult::expandedUncertaintyMm)
            .filter(each -> each != null)
            .findFirst()
            .orElse(null));
  }

  private String shape(BoreResults bore) {
    List<String> words = new ArrayList<>();
    boolean whole = bore.positions().stream().allMatch(each -> each.diameterMm() != null);
    words.add("Shape: " + shapeWords(bore.shape(), whole) + ".");
    if (bore.wearLine() != null) {
      double slope = bore.wearLine().slopeMmPerMm();
      double uncertainty = 2 * bore.wearLine().slopeStandardUncertaintyMmPerMm();
      words.add(
          "Wear line: the mean diameter changes by " + WearWords.of(slope, uncertainty) + ".");
    }
    if (bore.clearance() != null) {
      int decimals = decimals(bore);
      words.add(
          "Piston clearance: "
              + lengths.number(bore.clearance().smallestMm(), decimals)
              + " to "
              + lengths.length(bore.clearance().largestMm(), decimals)
              + ".");
    }
    words.add("Diameters at 20 °C, ± expanded uncertainty (95 %).");
    return String.join(" ", words);
  }

  private static String shapeWords(String shape, boolean whole) {
    if (shape == null) {
      return whole ? "a single depth cannot tell" : "not known until every position is read";
    }
    return switch (shape) {
      case "straight" -> "straight, as far as the uncertainty lets see";
      case "wide-at-top" -> "wide at the top";
      case "wide-at-bottom" -> "wide at the bottom";
      case "barrel" -> "barrel, widest in the middle";
      case "waist" -> "waist, narrowest in the middle";
      default -> shape;
    };
  }

  private Piece figures(CylinderResults cylinder) {
    double profile = PROFILE_SHARE * type.width();
    BoreProfileFigure profileFigure = BoreProfileFigure.of(facts.results(), cylinder, lengths);
    Piece left = type.within(profile - 12).figure(profileFigure, FIGURES_HEIGHT, Typesetter.SMALL);
    if (facts.job().plan().axes().size() < 2) {
      return left;
    }
    Piece right =
        type.within(type.width() - profile)
            .figure(
                RoundnessFigure.of(facts.results(), cylinder, lengths),
                FIGURES_HEIGHT,
                Typesetter.SMALL);
    return type.side(left, profile, right);
  }

  private List<String> check(CheckResult check) {
    CheckWords words = new CheckWords(lengths, check);
    return List.of(words.name(), words.value(), words.limit(), words.verdict(), words.sureness());
  }
}
