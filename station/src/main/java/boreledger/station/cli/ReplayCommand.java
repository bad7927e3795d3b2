package boreledger.station.cli;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.LineFault;
import boreledger.station.app.Replay;
import boreledger.station.app.UsageProblem;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.results.JobResults;
import boreledger.station.results.ResultsText;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Gauges from capture files. */
@Command(
    name = "replay",
    description = "Gauges from capture files, and says what the readings mean.",
    footer = {
      "",
      "Each capture becomes a session of its own. Every file is read completely before the ledger",
      "is touched.",
      "Example: boreledger replay --job my.job.toml --capture bores.capture.jsonl --ledger my.db"
    })
final class ReplayCommand implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(names = "--job", required = true, paramLabel = "FILE", description = "The job file.")
  private Path job;

  @Option(
      names = "--capture",
      required = true,
      paramLabel = "FILE",
      description = "A capture file; may be given several times.")
  private List<Path> captures;

  @Option(
      names = "--ledger",
      required = true,
      paramLabel = "FILE",
      description = "The ledger, made when there is none.")
  private Path ledger;

  @Option(
      names = "--gauges",
      paramLabel = "DIR",
      description = "Where else to look for gauge profiles; first beside each capture.")
  private Path gauges;

  @Override
  public Integer call() throws FileProblem, UsageProblem, LineFault, LedgerFault {
    Replay replay = Replay.prepare(job, captures, gauges);
    JobResults results = replay.into(ledger, new ProgressLines(answer));
    answer.print(results, ResultsText.of(results));
    return ExitStatus.attentionIf(results.attention());
  }
}
