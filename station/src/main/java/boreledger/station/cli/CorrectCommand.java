package boreledger.station.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Corrects what stands in a ledger, without erasing it. */
@Command(
    name = "correct",
    synopsisSubcommandLabel = "WHAT",
    description = "Corrects where a reading was taken, or what a session was opened with.",
    subcommands = {CorrectMoveCommand.class, CorrectSessionCommand.class},
    footer = {
      "",
      "What was written stays; results go by the latest that was said, and the audit shows both.",
      "A reading that should not count at all is taken back: see take-back.",
      "Example: boreledger correct move --ledger bench.db --entry 23 --to \"cylinder 2, 60 mm, pin\"",
      "  --why \"wrong cylinder\" --who \"A. Turner\""
    })
final class CorrectCommand implements Runnable {
  @Spec private CommandSpec spec;
  @Mixin private Answer answer;

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "correct what?");
  }
}
