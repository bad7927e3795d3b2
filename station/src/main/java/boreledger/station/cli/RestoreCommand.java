package boreledger.station.cli;

import boreledger.drivers.file.FileProblem;
import boreledger.station.app.UsageProblem;
import boreledger.station.keeping.Restore;
import boreledger.station.keeping.Restore.Restored;
import boreledger.station.ledger.LedgerFault;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** A ledger from its backup. */
@Command(
    name = "restore",
    description = "Makes a ledger from a backup, once the backup's chain is found whole.",
    footer = {
      "",
      "A ledger that is there is refused; with --replace it is kept beside under another name.",
      "Example: boreledger restore --from /media/stick/bench.db --ledger bench.db"
    })
final class RestoreCommand implements Callable<Integer> {
  @ParentCommand private Boreledger program;
  @Mixin private Answer answer;

  @Option(names = "--from", required = true, paramLabel = "FILE", description = "The backup.")
  private Path from;

  @Option(names = "--ledger", required = true, paramLabel = "FILE", description = "The ledger.")
  private Path ledger;

  @Option(names = "--replace", description = "Put a ledger that is there aside.")
  private boolean replace;

  @Override
  public Integer call() throws LedgerFault, UsageProblem, FileProblem {
    Restore restore = new Restore(from, Clock.systemUTC());
    LongWork work = new LongWork(answer, "entries checked");
    program
        .interruption()
        .stopBy(
            () -> {
              restore.stop();
              work.stop();
            });
    Restored restored = restore.into(ledger, replace, work);
    answer.print(restored, restored.words());
    return ExitStatus.DONE;
  }
}
