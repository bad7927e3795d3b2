package boreledger.station.cli;

import boreledger.calc.match.RingMatch;
import boreledger.drivers.file.FileProblem;
import boreledger.station.app.MatchFile;
import boreledger.station.results.RingChoice;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Which ring suits which bore. */
@Command(
    name = "match",
    description = "Says which ring suits which bore best, and what that saves.",
    footer = {
      "",
      "The file is JSON with bores (name, perimeter_mm, target_mm, max_mm) and rings (name, gap_mm,",
      "in_perimeter_mm). The most bores are filled, then the least is filed off in all.",
      "Example: boreledger figure match --file rings.json"
    })
final class MatchFigure implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(
      names = "--file",
      required = true,
      paramLabel = "FILE",
      description = "The rings and bores.")
  private Path file;

  @Override
  public Integer call() throws FileProblem {
    MatchFile input = MatchFile.read(file);
    RingChoice choice = RingChoice.of(RingMatch.of(input.toPlace(), input.toFill()));
    answer.print(choice, choice.words());
    return ExitStatus.attentionIf(!choice.without().isEmpty());
  }
}
