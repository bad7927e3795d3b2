package boreledger.station.bench.bores;

import boreledger.station.bench.findings.Finding;
import boreledger.station.bench.model.BoreVerdicts;
import boreledger.station.bench.model.CheckWords;
import boreledger.station.bench.model.Verdict;
import boreledger.station.bench.words.BoresText;
import boreledger.station.bench.words.Told;
import boreledger.station.drawing.BlockFigure;
import boreledger.station.drawing.BoreProfileFigure;
import boreledger.station.drawing.RoundnessFigure;
import boreledger.station.job.DisplayUnit;
import boreledger.station.results.BudgetLine;
import boreledger.station.results.CheckResult;
import boreledger.station.results.JobResults;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.wording.LengthFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What the room shows of one cylinder, and of the whole engine around it.
 *
 * @param advice hone or oversize, in one sentence
 * @param reasons why, a line for each cylinder
 * @param verdicts of all cylinders
 * @param form the shown bore's form in words
 * @param checks of the shown cylinder
 */
record BoresPage(
    BlockFigure block,
    String advice,
    List<String> reasons,
    List<Verdict> verdicts,
    Verdict shown,
    BoreProfileFigure profile,
    RoundnessFigure sections,
    String form,
    List<Check> checks,
    List<String> cautions) {
  /**
   * A number held against a limit.
   *
   * @param budget where its uncertainty comes from, a line each
   */
  record Check(Verdict.Kind kind, String words, List<String> budget) {}

  static BoresPage of(Finding finding, int cylinder, DisplayUnit unit) {
    JobResults results = finding.results();
    DisplayUnit shownUnit = unit == null ? finding.job().displayUnit() : unit;
    LengthFormat format = new LengthFormat(shownUnit);
    BoreVerdicts words = new BoreVerdicts(format);
    CylinderResults shown = results.cylinders().get(cylinder - 1);
    return new BoresPage(
        BlockFigure.of(results, finding.job().engine().arrangement()),
        AdviceWords.of(results.advice(), format),
        AdviceWords.reasons(results.advice(), format),
        results.cylinders().stream().map(words::verdict).toList(),
        words.verdict(shown),
        BoreProfileFigure.of(results, shown, format),
        RoundnessFigure.of(results, shown, format),
        form(shown, format),
        shown.bore().checks().stream().map(check -> check(check, format)).toList(),
        Told.with(format).each(results.cautions()));
  }

  private static String form(CylinderResults cylinder, LengthFormat format) {
    List<String> words = new ArrayList<>();
    String shape = cylinder.bore().shape();
    words.add(shape == null ? BoresText.NO_SHAPE.with() : BoresText.SHAPE.with(shape(shape)));
    cylinder
        .bore()
        .signedTaperMm()
        .forEach(
            (axis, mm) -> {
              if (mm != null) {
                words.add(
                    BoresText.TAPER.with(
                        axis, format.difference(mm, format.usualDecimals()), format.symbol()));
              }
            });
    return String.join("\n", words);
  }

  private static String shape(String word) {
    return switch (word) {
      case "straight" -> BoresText.STRAIGHT.with();
      case "wide-at-top" -> BoresText.WIDE_AT_TOP.with();
      case "wide-at-bottom" -> BoresText.WIDE_AT_BOTTOM.with();
      case "barrel" -> BoresText.BARREL.with();
      case "waist" -> BoresText.WAIST.with();
      default -> word;
    };
  }

  private static Check check(CheckResult check, LengthFormat format) {
    CheckWords about = new CheckWords(check);
    String words =
        BoresText.CHECK.with(
            about.name(),
            format.length(check.valueMm(), check.expandedUncertaintyMm()),
            format.stated(check.limitMm()),
            about.state());
    return new Check(
        about.kind(), words, check.budget().stream().map(line -> budget(line, format)).toList());
  }

  private static String budget(BudgetLine line, LengthFormat format) {
    return BoresText.BUDGET_LINE.with(
        Told.recorded(line.line()),
        format.length(line.standardUncertaintyMm(), format.usualDecimals() + 1),
        String.format(Locale.ROOT, "%.0f", 100 * line.share()));
  }
}
