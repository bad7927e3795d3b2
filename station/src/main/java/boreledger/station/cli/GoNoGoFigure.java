package boreledger.station.cli;

import boreledger.calc.feeler.GoNoGo;
import boreledger.calc.uncertainty.Estimate;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A gap between the leaf that goes and the one that does not. */
@Command(
    name = "go-no-go",
    description = "Says what a gap is from the snug leaf and the first that will not go.",
    footer = {
      "",
      "Example: boreledger figure go-no-go --snug 0.50 --refused 0.55 --leaf-error 0.005"
    })
final class GoNoGoFigure implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(
      names = "--snug",
      required = true,
      paramLabel = "MM",
      description = "The thickest leaf or stack that goes.")
  private double snugMm;

  @Option(
      names = "--refused",
      required = true,
      paramLabel = "MM",
      description = "The thinnest that will not go.")
  private double refusedMm;

  @Option(
      names = "--leaf-error",
      required = true,
      paramLabel = "MM",
      description = "The permissible error of a leaf.")
  private double leafMaxErrorMm;

  /** The answer. */
  record Figure(double gapMm, double standardUncertaintyMm, double expandedUncertaintyMm) {}

  @Override
  public Integer call() {
    Estimate gap = new GoNoGo(snugMm, refusedMm, leafMaxErrorMm).gap();
    answer.print(
        new Figure(gap.valueMm(), gap.standardUncertaintyMm(), gap.expandedUncertaintyMm()),
        String.format(
            Locale.ROOT,
            "%.4f mm, give or take %.4f mm (95 %%).",
            gap.valueMm(),
            gap.expandedUncertaintyMm()));
    return ExitStatus.DONE;
  }
}
