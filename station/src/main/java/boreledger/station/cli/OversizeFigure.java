package boreledger.station.cli;

import boreledger.calc.oversize.EngineAdvice;
import boreledger.calc.oversize.HoningLimits;
import boreledger.calc.oversize.Oversizes;
import boreledger.calc.oversize.WornCylinder;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The smallest oversize that cleans every cylinder. */
@Command(
    name = "oversize",
    description = "Says which listed oversize cleans up every cylinder.",
    footer = {
      "",
      "One largest diameter for each cylinder; all cylinders go to the same oversize. The cut is",
      "taken to follow the worn bore: on its original centre a bore worn on one side needs more.",
      "Example: boreledger figure oversize --nominal 96 --largest 96.21,96.08 --uncertainty 0.004",
      "  --oversizes 0.25,0.5,1 --honing-allowance 0.05"
    })
final class OversizeFigure implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(
      names = "--nominal",
      required = true,
      paramLabel = "MM",
      description = "The nominal bore.")
  private double nominalMm;

  @Option(
      names = "--largest",
      required = true,
      split = ",",
      paramLabel = "MM",
      description = "The largest diameter read in each cylinder.")
  private List<Double> largestMm;

  @Option(
      names = "--uncertainty",
      required = true,
      paramLabel = "MM",
      description = "The expanded uncertainty of a diameter.")
  private double expandedUncertaintyMm;

  @Option(
      names = "--oversizes",
      required = true,
      split = ",",
      paramLabel = "MM",
      description = "The oversizes that pistons are made for.")
  private List<Double> oversizesMm;

  @Option(
      names = "--honing-allowance",
      required = true,
      paramLabel = "MM",
      description = "Stock on the diameter left for the hone.")
  private double honingAllowanceMm;

  /**
   * The answer.
   *
   * @param oversizeMm null when none cleans every cylinder
   * @param oversizeOnOriginalCentreMm for bores worn on one side, from the nominal bore
   */
  record Figure(
      Double oversizeMm,
      Double finishedMm,
      Double oversizeOnOriginalCentreMm,
      boolean largestListed) {}

  @Override
  public Integer call() {
    List<WornCylinder> cylinders = new ArrayList<>();
    for (double each : largestMm) {
      double unwornMm = Math.min(nominalMm, each);
      cylinders.add(
          new WornCylinder(
              cylinders.size() + 1, each, unwornMm, expandedUncertaintyMm, unwornMm, null));
    }
    Oversizes oversizes = new Oversizes(nominalMm, oversizesMm, honingAllowanceMm);
    EngineAdvice advice = EngineAdvice.of(cylinders, oversizes, HoningLimits.NONE);
    Double oversizeMm = advice.oversizeMm();
    Figure figure =
        new Figure(
            oversizeMm,
            oversizeMm == null ? null : oversizes.finishedMm(oversizeMm),
            advice.oversizeOnOriginalCentreMm(),
            advice.largestListed());
    answer.print(figure, words(figure));
    return ExitStatus.attentionIf(oversizeMm == null);
  }

  private static String words(Figure figure) {
    if (figure.oversizeMm() == null) {
      return "No listed oversize cleans every cylinder: sleeve, or another block.";
    }
    String centre =
        figure.oversizeOnOriginalCentreMm() == null
            ? "no listed one will do"
            : String.format(Locale.ROOT, "%.3f mm", figure.oversizeOnOriginalCentreMm());
    return String.format(
        Locale.ROOT,
        "Oversize %.3f mm, finished %.4f mm%s. On its original centre, a bore worn on one side: %s.",
        figure.oversizeMm(),
        figure.finishedMm(),
        figure.largestListed()
            ? "; the largest listed: compare the remaining wall with the maker's data first"
            : "",
        centre);
  }
}
