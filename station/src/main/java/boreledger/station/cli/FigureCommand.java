package boreledger.station.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** One-off computations. */
@Command(
    name = "figure",
    synopsisSubcommandLabel = "FIGURE",
    description = "Works something out without a ledger.",
    footer = {"", "Example: boreledger figure gap-change --from 96.061,96.047 --to 96.020,96.012"},
    subcommands = {
      GapChangeFigure.class,
      TiltFigure.class,
      HotGapFigure.class,
      TargetFigure.class,
      FeelersFigure.class,
      GoNoGoFigure.class,
      FilingFigure.class,
      MatchFigure.class,
      OversizeFigure.class,
      GaugeStudyFigure.class,
      LinearityFigure.class,
      StabilityFigure.class,
      RockFigure.class
    })
final class FigureCommand implements Runnable {
  @Spec private CommandSpec spec;
  @Mixin private Answer answer;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "which figure?");
  }
}
