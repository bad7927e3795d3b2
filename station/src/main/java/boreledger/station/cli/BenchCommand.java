package boreledger.station.cli;

import boreledger.station.app.Folders;
import boreledger.station.app.FootSwitches;
import boreledger.station.app.LiveGauging;
import boreledger.station.app.TypedValues;
import boreledger.station.app.UsageProblem;
import boreledger.station.results.JobResults;
import boreledger.station.results.ResultsText;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The bench window on a live gauge. */
@Command(
    name = "bench",
    description = "Opens the station's window; with a job and a gauge it begins to gauge at once.",
    footer = {
      "",
      "Without options the window asks what shall be gauged: boreledger bench",
      "To practise without a gauge: boreledger bench --practice",
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
    boolean sample = live.job() == null;
    live.practiseOn(Folders.sampleJob());
    ProgressLines lines = new ProgressLines(answer);
    if (live.isSilent()) {
      Path usual = ledger == null ? Folders.practiceLedger() : ledger;
      try (FootSwitches switches = live.footSwitches()) {
        return told(Window.show(usual, null, new TypedValues(), lines, switches));
      }
    }
    Path file = ledger(sample);
    TypedValues typed = new TypedValues();
    try (LiveGauging gauging = LiveGauging.prepare(live.request(file), typed);
        FootSwitches switches = live.footSwitches()) {
      answer.tell("ledger " + file);
      return told(Window.show(file, gauging::run, typed, lines, switches));
    }
  }

  private Path ledger(boolean sample) throws UsageProblem {
    if (ledger != null) {
      return ledger;
    } else if (live.job() == null) {
      throw new UsageProblem("--job is missing");
    }
    Path usual = sample ? Folders.practiceLedger() : Folders.ledgerBeside(live.job());
    Folders.makeFor(usual);
    return usual;
  }

  private int told(Optional<JobResults> last) {
    if (last.isEmpty()) {
      return ExitStatus.DONE;
    }
    answer.print(last.get(), ResultsText.of(last.get()));
    return ExitStatus.attentionIf(last.get().attention());
  }
}
