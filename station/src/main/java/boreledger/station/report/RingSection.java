package boreledger.station.report;

import boreledger.station.drawing.GapFigure;
import boreledger.station.job.Ring;
import boreledger.station.report.Typesetter.Fact;
import boreledger.station.results.FiledResult;
import boreledger.station.results.RingResults;
import boreledger.station.results.RingResults.GapResult;
import boreledger.station.results.RingResults.TargetResult;
import boreledger.station.results.RingResults.TightestResult;
import boreledger.station.wording.LengthFormat;
import boreledger.station.wording.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** One ring in one cylinder: its gaps against the bore, and what to do. */
final class RingSection {
  private static final double WORDS_SHARE = 0.58;
  private static final double FIGURE_HEIGHT = 150;
  private static final double TALLEST_FIGURE = 220;
  private static final double TALLEST_BESIDE = 420;
  private static final double NAME_SHARE = 0.23;
  private static final String FILING =
      ", a little at a time, measuring in the bore; mind the file and the ring's sharp ends";

  private static final List<Column> PASSES =
      List.of(
          Column.numbers("Turns filed", 1.5),
          Column.numbers("Gap before", 1.5),
          Column.numbers("Gap after", 1.5),
          Column.numbers("Opened by", 1.5),
          Column.words("By", 2.4),
          Column.words("Noted", 2.6),
          Column.words("Entry", 2.6));

  private final SheetFacts facts;
  private final Typesetter type;
  private final LengthFormat lengths;

  RingSection(SheetFacts facts, Typesetter type) {
    this.facts = facts;
    this.type = type;
    this.lengths = facts.lengths();
  }

  List<Piece> pieces(int cylinder, RingResults results) {
    RingWords words = new RingWords(lengths, results);
    Ring ring = facts.job().ring(results.ring()).orElseThrow();
    List<Piece> pieces = new ArrayList<>();
    pieces.addAll(
        type.subheading("Cylinder " + cylinder + ", " + words.name() + ": " + words.verdict()));
    if (words.read() == 0) {
      pieces.addAll(type.paragraph(waiting(ring)));
    } else {
      pieces.addAll(gauged(results, ring));
    }
    if (!results.filed().isEmpty()) {
      pieces.addAll(filed(results));
    }
    if (!results.cautions().isEmpty()) {
      pieces.add(Piece.space(4));
    }
    Wording.PLAIN.each(results.cautions()).forEach(each -> pieces.addAll(type.caution(each)));
    return pieces;
  }

  /** The passes with the file that count, whoever filed. */
  private List<Piece> filed(RingResults results) {
    int decimals = lengths.coarseDecimals();
    List<List<String>> rows = new ArrayList<>();
    for (FiledResult pass : results.filed()) {
      rows.add(
          List.of(
              Integer.toString(pass.turns()),
              lengths.number(pass.beforeMm(), decimals),
              lengths.number(pass.afterMm(), decimals),
              lengths.difference(pass.afterMm() - pass.beforeMm(), decimals),
              pass.who(),
              Times.minute(pass.wall()),
              "No. " + pass.entry() + (pass.sinceGauged() ? "" : ", gauged since")));
    }
    return Piece.join(List.of(List.of(Piece.space(4).keepingNext()), type.table(PASSES, rows)));
  }

  private String waiting(Ring ring) {
    String depths = ring.depthsMm().stream().map(lengths::depth).collect(Collectors.joining(", "));
    return "To be gauged at "
        + depths
        + " "
        + lengths.symbol()
        + " below the deck. Maker's gap "
        + lengths.stated(ring.gapMinMm())
        + " to "
        + lengths.stated(ring.gapMaxMm())
        + " "
        + lengths.symbol()
        + ".";
  }

  /** Words and figure beside each other; below each other when there are many depths. */
  private List<Piece> gauged(RingResults results, Ring ring) {
    double left = WORDS_SHARE * type.width();
    Typesetter narrow = type.within(left - 14);
    List<Piece> words = words(results, ring, narrow);
    GapFigure figure = GapFigure.of(results, ring, lengths);
    double height = Math.max(FIGURE_HEIGHT, Math.min(TALLEST_FIGURE, Piece.height(words)));
    Piece right = type.within(type.width() - left).figure(figure, height, Typesetter.SMALL);
    boolean cautions = !results.cautions().isEmpty();
    if (Piece.height(words) > TALLEST_BESIDE) {
      return Piece.join(
          List.of(
              List.of(type.figure(figure, FIGURE_HEIGHT, Typesetter.SMALL)),
              words(results, ring, type)));
    }
    Piece both = type.side(Piece.stacked(words), left, right);
    return List.of(cautions ? both.keepingNext() : both);
  }

  private List<Piece> words(RingResults results, Ring ring, Typesetter column) {
    return Piece.join(
        List.of(table(results, column), column.facts(NAME_SHARE, facts(results, ring))));
  }

  private List<Piece> table(RingResults results, Typesetter column) {
    boolean tilts = results.gaps().stream().anyMatch(gap -> gap.tiltDeg() != null);
    List<Column> columns = new ArrayList<>();
    columns.add(Column.words("Depth", 1.1));
    columns.add(Column.numbers("Measured", 2.5));
    columns.add(Column.numbers("Expected", 1.5));
    columns.add(Column.numbers("Bore's change", 2.6));
    columns.add(Column.numbers("E_n", 0.9));
    if (tilts) {
      columns.add(Column.numbers("Tilt", 0.9));
      columns.add(Column.numbers("If square", 1.5));
    }
    return column.table(
        columns, results.gaps().stream().map(gap -> row(results, gap, tilts)).toList());
  }

  private List<String> row(RingResults results, GapResult gap, boolean tilts) {
    int decimals = decimals(results);
    List<String> row = new ArrayList<>();
    row.add(lengths.depth(gap.depthMm()) + (gap.beyondReadings() ? " *" : ""));
    row.add(lengths.number(gap.measuredMm(), gap.measuredUncertaintyMm()));
    row.add(lengths.number(gap.expectedMm(), decimals));
    row.add(change(gap));
    row.add(gap.en() == null ? "-" : minus(String.format(Locale.ROOT, "%.2f", gap.en())));
    if (tilts) {
      row.add(gap.tiltDeg() == null ? "-" : String.format(Locale.ROOT, "%.2f°", gap.tiltDeg()));
      row.add(lengths.number(gap.correctedMm(), decimals));
    }
    return row;
  }

  private String change(GapResult gap) {
    Double uncertaintyMm = gap.expectedChangeUncertaintyMm();
    if (gap.expectedChangeMm() == null || uncertaintyMm == 0) {
      return lengths.number(gap.expectedChangeMm(), lengths.coarseDecimals());
    }
    int decimals = lengths.decimals(uncertaintyMm);
    return lengths.difference(gap.expectedChangeMm(), decimals)
        + " ± "
        + lengths.number(uncertaintyMm, decimals);
  }

  /** The decimals of what the bore and the gaps together say. */
  private int decimals(RingResults results) {
    TightestResult tightest = results.tightest();
    return lengths.decimals(tightest == null ? null : tightest.expandedUncertaintyMm());
  }

  private List<Fact> facts(RingResults results, Ring ring) {
    List<Fact> all = new ArrayList<>();
    TightestResult tightest = results.tightest();
    if (tightest != null) {
      all.add(
          new Fact(
              "Tightest, cold",
              lengths.length(tightest.gapMm(), tightest.expandedUncertaintyMm())
                  + at(tightest.depthMm())));
      all.add(new Fact("Tightest, hot", hot(tightest)));
    }
    if (results.target() != null) {
      all.add(new Fact("Target", target(results)));
    }
    if (results.removeMm() != null && results.removeMm() > 0) {
      String remove = new RingWords(lengths, results).remove() + " " + lengths.symbol();
      all.add(new Fact("To file off", remove + FILING));
    }
    all.add(
        new Fact(
            "Maker's gap",
            lengths.stated(ring.gapMinMm())
                + " to "
                + lengths.stated(ring.gapMaxMm())
                + " "
                + lengths.symbol()
                + "; the maker's data decide"));
    if (results.taperFromGaps() != null) {
      all.add(
          new Fact(
              "Taper by gaps",
              lengths.length(
                      results.taperFromGaps().amountMm(),
                      results.taperFromGaps().expandedUncertaintyMm())
                  + ", from the gaps alone"));
    }
    if (results.gaps().stream().anyMatch(GapResult::beyondReadings)) {
      all.add(new Fact("*", "beyond the bore readings"));
    }
    return all;
  }

  private String hot(TightestResult tightest) {
    int decimals = lengths.coarseDecimals();
    return lengths.length(tightest.hotGapMm(), decimals)
        + " left"
        + at(tightest.hotDepthMm())
        + ", by free expansion; temperatures: "
        + tightest.temperaturesOrigin();
  }

  private String target(RingResults results) {
    TargetResult target = results.target();
    String factor =
        target.factor() == null
            ? ""
            : BigDecimal.valueOf(target.factor()).toPlainString() + " × bore; ";
    String raised =
        target.raisedTo() == null
            ? ""
            : "; raised from "
                + lengths.number(target.raisedFromMm(), lengths.usualDecimals())
                + " to "
                + target.raisedTo();
    return lengths.length(results.targetMm(), decimals(results))
        + " at the tightest point: "
        + factor
        + target.origin()
        + raised;
  }

  private String at(double depthMm) {
    return ", " + lengths.depth(depthMm) + " " + lengths.symbol() + " below the deck";
  }

  private static String minus(String number) {
    String zeroFree = number.matches("-0\\.0+") ? number.substring(1) : number;
    return zeroFree.replace("-", LengthFormat.MINUS);
  }
}
