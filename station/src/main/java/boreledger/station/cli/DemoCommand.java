package boreledger.station.cli;

import boreledger.drivers.capture.Pace;
import boreledger.drivers.file.FileProblem;
import boreledger.station.app.Demo;
import boreledger.station.app.Play;
import boreledger.station.app.UsageProblem;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.results.JobResults;
import boreledger.station.results.ResultsText;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The invented engine, gauged before your eyes. */
@Command(
    name = "demo",
    description = "Gauges an invented engine from recorded bytes, and says what the readings mean.",
    footer = {
      "",
      "With a display the bench opens and plays it live; --headless only prints the results.",
      "Example: boreledger demo --headless --ledger demo.db"
    })
final class DemoCommand implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(
      names = "--ledger",
      paramLabel = "FILE",
      description = "The new ledger; otherwise one in a temporary folder.")
  private Path ledger;

  @Option(names = "--headless", description = "Never open a window.")
  private boolean headless;

  @Override
  public Integer call() throws FileProblem, UsageProblem, LedgerFault {
    Demo demo = Demo.prepare(ledger);
    answer.tell("ledger " + demo.ledgerFile());
    Play play = new Play(new ProgressLines(answer));
    JobResults results = demo.play(() -> Pace.asFastAsRead(), play);
    answer.print(results, ResultsText.of(results));
    return ExitStatus.attentionIf(results.attention());
  }
}
