package boreledger.station.cli;

import boreledger.station.app.Folders;
import boreledger.station.app.LiveGauging;
import boreledger.station.app.LiveRequest;
import boreledger.station.app.UsageProblem;
import boreledger.station.results.JobResults;
import boreledger.station.results.ResultsText;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The bench window on a live gauge. */
@Command(
    name = "bench",
    description = "Opens the bench window and gauges from a serial port.",
    footer = {
      "",
      "An unfinished session of the same job and measure is resumed at its next position.",
      "Example: boreledger bench --job my.job.toml --gauge my.gauge.toml --port /dev/ttyUSB0",
      "  --measure bore --setting-temp 20.4 --block-temp 21.3"
    })
final class BenchCommand implements Callable<Integer> {
  @Mixin private Answer answer;
  @Mixin private LiveOptions live;

  @Option(
      names = "--ledger",
      paramLabel = "FILE",
      description = "The ledger, made when there is none; otherwise one beside the job file.")
  private Path ledger;

  @Override
  public Integer call() throws Exception {
    if (!Window.canOpen()) {
      throw new UsageProblem("there is no display to open the bench on; use capture instead");
    }
    Path file = ledger == null ? Folders.ledgerBeside(live.job()) : ledger;
    LiveRequest request = live.request(file);
    try (LiveGauging gauging = LiveGauging.prepare(request)) {
      answer.tell("ledger " + file);
      JobResults results = Window.show(file, gauging::run, new ProgressLines(answer)).orElseThrow();
      answer.print(results, ResultsText.of(results));
      return ExitStatus.attentionIf(results.attention());
    }
  }
}
