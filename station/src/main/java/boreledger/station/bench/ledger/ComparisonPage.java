package boreledger.station.bench.ledger;

import boreledger.station.bench.model.Verdict;
import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.Text;
import boreledger.station.bench.words.Told;
import boreledger.station.drawing.ChangeFigure;
import boreledger.station.results.SessionComparison;
import boreledger.station.results.SessionComparison.Change;
import boreledger.station.wording.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What is shown of two sessions held against each other, for one cylinder.
 *
 * @param verdicts how many places changed, for each cylinder
 * @param cautions what to mind, in words
 * @param missing places that one of the two did not read, a line each
 */
record ComparisonPage(
    int cylinder,
    List<Verdict> verdicts,
    ChangeFigure figure,
    List<Row> rows,
    List<String> cautions,
    List<String> missing) {
  private static final String GREW = "grew";
  private static final String SHRANK = "shrank";

  /** Takes copies of the lists. */
  ComparisonPage {
    verdicts = List.copyOf(verdicts);
    rows = List.copyOf(rows);
    cautions = List.copyOf(cautions);
    missing = List.copyOf(missing);
  }

  /**
   * One quantity.
   *
   * @param what where it was measured, or what follows
   * @param judged whether it changed beyond its uncertainty, in words behind a sign
   */
  record Row(
      String what, String before, String after, String change, String judged, boolean changed) {
    /** All of it in one sentence, to be said aloud. */
    String spoken() {
      return LedgerText.COMPARE_SPOKEN.with(what, before + ", " + after, change, judged);
    }
  }

  static ComparisonPage of(SessionComparison comparison, int wanted, LengthFormat lengths) {
    int cylinders = comparison.changes().stream().mapToInt(Change::cylinder).max().orElse(0);
    int cylinder = Math.max(1, Math.min(cylinders, wanted));
    return new ComparisonPage(
        cylinder,
        IntStream.rangeClosed(1, cylinders).mapToObj(each -> verdict(comparison, each)).toList(),
        ChangeFigure.of(comparison, cylinder, lengths),
        comparison.changes().stream()
            .filter(each -> each.cylinder() == cylinder)
            .map(each -> row(each, lengths))
            .toList(),
        Told.with(lengths).each(comparison.cautions()),
        missing(comparison));
  }

  private static Verdict verdict(SessionComparison comparison, int cylinder) {
    List<Change> its =
        comparison.changes().stream().filter(each -> each.cylinder() == cylinder).toList();
    long changed = its.stream().filter(ComparisonPage::isChanged).count();
    Verdict.Kind kind =
        its.isEmpty() ? Verdict.Kind.OPEN : changed > 0 ? Verdict.Kind.LOOK : Verdict.Kind.KEPT;
    return new Verdict(
        kind,
        BenchText.PLACE_CYLINDER.with(Integer.toString(cylinder)),
        LedgerText.COMPARE_CHANGED.with(Long.toString(changed), Integer.toString(its.size())),
        "");
  }

  private static Row row(Change change, LengthFormat lengths) {
    Double uMm = change.expandedUncertaintyMm() == 0 ? null : change.expandedUncertaintyMm();
    int decimals = lengths.decimals(uMm);
    return new Row(
        what(change, lengths),
        lengths.number(change.beforeMm(), decimals),
        lengths.number(change.afterMm(), decimals),
        lengths.difference(change.changeMm(), decimals)
            + " ± "
            + lengths.number(change.expandedUncertaintyMm(), decimals),
        judged(change).with(),
        isChanged(change));
  }

  private static boolean isChanged(Change change) {
    return change.state().equals(GREW) || change.state().equals(SHRANK);
  }

  private static Text judged(Change change) {
    return switch (change.state()) {
      case GREW -> LedgerText.COMPARE_GREW;
      case SHRANK -> LedgerText.COMPARE_SHRANK;
      default -> LedgerText.COMPARE_SAME;
    };
  }

  private static String what(Change change, LengthFormat lengths) {
    String depth =
        change.depthMm() == null ? "" : lengths.depth(change.depthMm()) + " " + lengths.symbol();
    return switch (change.what()) {
      case "taper" -> LedgerText.COMPARE_TAPER.with(change.axis());
      case "out-of-round" -> LedgerText.COMPARE_ROUND.with(depth);
      case "gap" -> depth;
      default -> LedgerText.COMPARE_DIAMETER.with(depth, change.axis());
    };
  }

  private static List<String> missing(SessionComparison comparison) {
    List<String> lines = new ArrayList<>();
    if (!comparison.onlyBefore().isEmpty()) {
      lines.add(LedgerText.COMPARE_ONLY_BEFORE.with(String.join("; ", comparison.onlyBefore())));
    }
    if (!comparison.onlyAfter().isEmpty()) {
      lines.add(LedgerText.COMPARE_ONLY_AFTER.with(String.join("; ", comparison.onlyAfter())));
    }
    return lines;
  }
}
