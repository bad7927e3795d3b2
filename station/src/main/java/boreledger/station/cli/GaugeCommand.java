package boreledger.station.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Gauge profiles. */
@Command(
    name = "gauge",
    synopsisSubcommandLabel = "WHAT",
    description = "Tries gauge profiles, and learns new ones.",
    footer = {
      "",
      "Example: boreledger gauge check --gauge my.gauge.toml --capture my.capture.jsonl"
    },
    subcommands = {GaugeCheckCommand.class, GaugeLearnCommand.class})
final class GaugeCommand implements Runnable {
  @Spec private CommandSpec spec;
  @Mixin private Answer answer;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "gauge what?");
  }
}
