package boreledger.station.cli;

import boreledger.drivers.capture.Pace;
import boreledger.station.app.Demo;
import boreledger.station.app.FootSwitches;
import boreledger.station.app.Play;
import boreledger.station.app.TypedValues;
import boreledger.station.app.UsageProblem;
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
    description = {
      "Gauges an invented engine from recorded bytes, says what the readings mean, and writes the",
      "build sheet beside the ledger."
    },
    footer = {
      "",
      "With a display the bench opens and plays it live; --headless only prints the results.",
      "Example: boreledger demo --headless --ledger demo.db"
    })
final class DemoCommand implements Callable<Integer> {
  private static final double SLOWEST = 0.1;
  private static final double FASTEST = 100;

  @Mixin private Answer answer;

  @Option(
      names = "--ledger",
      paramLabel = "FILE",
      description = "The new ledger; otherwise one in a temporary folder.")
  private Path ledger;

  @Option(names = "--headless", description = "Never open a window.")
  private boolean headless;

  @Option(
      names = "--speed",
      paramLabel = "TIMES",
      defaultValue = "3",
      description = "How fast the bench plays it, 0.1 to 100 times; ${DEFAULT-VALUE} otherwise.")
  private double speed;

  @Override
  public Integer call() throws Exception {
    if (!(speed >= SLOWEST && speed <= FASTEST)) {
      throw new UsageProblem("--speed is " + speed + ", expected 0.1 to 100");
    }
    Demo demo = Demo.prepare(ledger);
    answer.tell("ledger " + demo.ledgerFile());
    ProgressLines lines = new ProgressLines(answer);
    boolean window = !headless && Window.canOpen();
    JobResults results =
        window
            ? Window.show(
                    demo.ledgerFile(),
                    play -> demo.play(() -> Pace.times(speed), play),
                    new TypedValues(),
                    lines,
                    FootSwitches.none())
                .orElseThrow()
            : demo.play(Pace::asFastAsRead, new Play(lines));
    answer.tell("build sheet " + demo.sheetFile());
    answer.print(results, ResultsText.of(results) + "Build sheet " + demo.sheetFile());
    return ExitStatus.attentionIf(results.attention());
  }
}
