package boreledger.station.cli;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.LineFault;
import boreledger.station.app.FootSwitches;
import boreledger.station.app.LiveGauging;
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
import picocli.CommandLine.ParentCommand;

/** Gauges from a live line without a window. */
@Command(
    name = "capture",
    description = "Gauges from a serial port without a window, and says what the readings mean.",
    footer = {
      "",
      "An unfinished session of the same job and measure is resumed at its next position. Stop",
      "with Ctrl-C: what was acknowledged is kept. When the gauge is unplugged or falls asleep it is",
      "waited for: the same device, or none.",
      "Example: boreledger capture --job my.job.toml --gauge my.gauge.toml --port /dev/ttyUSB0",
      "  --measure bore --ledger my.db --setting-temp 20.4 --block-temp 21.3",
      "Two gauges at once: add --also depth.gauge.toml@/dev/ttyUSB1:ring-depth:top",
      "A foot switch with two pedals: add --switch /dev/ttyUSB2=A:back --switch /dev/ttyUSB2=B:skip",
      "To practise without a gauge: boreledger capture --job my.job.toml --practice --pace 20",
      "  --measure bore --ledger practice.db"
    })
final class CaptureCommand implements Callable<Integer> {
  @ParentCommand private Boreledger program;
  @Mixin private Answer answer;
  @Mixin private LiveOptions live;

  @Option(
      names = "--ledger",
      required = true,
      paramLabel = "FILE",
      description = "The ledger, made when there is none.")
  private Path ledger;

  @Override
  public Integer call() throws FileProblem, UsageProblem, LineFault, LedgerFault {
    try (LiveGauging gauging = LiveGauging.prepare(live.request(ledger));
        FootSwitches switches = live.footSwitches()) {
      Play play = new Play(new ProgressLines(answer));
      switches.start(play::wish, play::notice);
      program.interruption().stopBy(play::stop);
      JobResults results = gauging.run(play);
      answer.print(results, ResultsText.of(results));
      return ExitStatus.attentionIf(results.attention());
    }
  }
}
