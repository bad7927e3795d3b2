package boreledger.station.cli;

import boreledger.calc.gapping.GapRule;
import boreledger.calc.gapping.GapTarget;
import boreledger.drivers.file.FileProblem;
import boreledger.station.app.UsageProblem;
import boreledger.station.table.GapRuleTable;
import boreledger.station.table.Tables;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The gap that a rule of the table wants. */
@Command(
    name = "target",
    description = "Says which end gap the rule table wants for a use and a ring.",
    footer = {
      "",
      "The ring or engine maker's figure goes before any rule. The table is the file",
      "tables/gap-rules.toml in the program's folder; each row names its origin.",
      "Example: boreledger figure target --bore 96 --rule boosted-hard --ring top"
    })
final class TargetFigure implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(names = "--bore", required = true, paramLabel = "MM", description = "The bore.")
  private double boreMm;

  @Option(
      names = "--rule",
      required = true,
      paramLabel = "USE",
      description = "How the engine will be used, such as plain or boosted-hard.")
  private String use;

  @Option(
      names = "--ring",
      required = true,
      paramLabel = "RING",
      description = "Which ring: top, second or oil.")
  private String ring;

  /**
   * The answer.
   *
   * @param targetMm null for a ring that is only verified
   */
  record Figure(Double targetMm, Double factor, String origin, Double raisedFromMm) {}

  @Override
  public Integer call() throws FileProblem, UsageProblem {
    GapRuleTable table = Tables.inForce().gapRules();
    GapRule rule = rule(table, ring);
    if (rule.verifyOnly()) {
      answer.print(
          new Figure(null, null, rule.origin(), null),
          "This ring is verified against its maker's range and not filed (" + rule.origin() + ").");
      return ExitStatus.DONE;
    }
    GapTarget target = target(table, rule);
    Double raisedFromMm = target.raise() == null ? null : target.raise().fromMm();
    answer.print(
        new Figure(target.targetMm(), target.factor(), target.origin(), raisedFromMm),
        String.format(
            Locale.ROOT,
            "%.4f mm at the tightest point of the travel: %.4f of the bore (%s).%s The ring or"
                + " engine maker's figure goes before it.",
            target.targetMm(),
            target.factor(),
            target.origin(),
            raisedFromMm == null ? "" : " Raised to the top ring's target."));
    return ExitStatus.DONE;
  }

  private GapTarget target(GapRuleTable table, GapRule rule) throws UsageProblem {
    GapTarget target = GapTarget.byRule(rule, boreMm);
    if (!ring.equals("second") || table.rules().find(use, "top").isEmpty()) {
      return target;
    }
    return target.notBelowTopRing(GapTarget.byRule(rule(table, "top"), boreMm));
  }

  private GapRule rule(GapRuleTable table, String ofRing) throws UsageProblem {
    if (!table.uses().containsKey(use)) {
      throw new UsageProblem(
          "--rule is " + use + ", expected one of " + String.join(", ", table.uses().keySet()));
    }
    return table
        .rules()
        .find(use, ofRing)
        .orElseThrow(
            () ->
                new UsageProblem(
                    "the rule table has no row for the use " + use + " and the ring " + ofRing));
  }
}
