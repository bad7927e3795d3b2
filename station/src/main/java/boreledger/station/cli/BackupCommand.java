package boreledger.station.cli;

import boreledger.drivers.file.FileProblem;
import boreledger.station.app.UsageProblem;
import boreledger.station.keeping.Backup;
import boreledger.station.keeping.Proof;
import boreledger.station.ledger.LedgerFault;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** A copy of a ledger. */
@Command(
    name = "backup",
    description = "Copies a ledger as it is at this moment, while it may be in use.",
    footer = {
      "",
      "The copy's chain is followed to its head before it is put in place. Keep the head that is",
      "printed elsewhere: it tells whether the copy is whole.",
      "Example: boreledger backup --ledger bench.db --out /media/stick/bench.db"
    })
final class BackupCommand implements Callable<Integer> {
  @ParentCommand private Boreledger program;
  @Mixin private Answer answer;

  @Option(names = "--ledger", required = true, paramLabel = "FILE", description = "The ledger.")
  private Path ledger;

  @Option(names = "--out", required = true, paramLabel = "FILE", description = "The new copy.")
  private Path out;

  @Option(names = "--replace", description = "Overwrite the copy if it is there.")
  private boolean replace;

  @Override
  public Integer call() throws LedgerFault, UsageProblem, FileProblem {
    Backup backup = new Backup(ledger);
    LongWork work = new LongWork(answer, "entries checked");
    program
        .interruption()
        .stopBy(
            () -> {
              backup.stop();
              work.stop();
            });
    Proof proof = backup.into(out, replace, work);
    answer.print(
        proof,
        "Backed up "
            + proof.entries()
            + " entries into "
            + proof.file()
            + ", head "
            + proof.ledgerHead());
    return ExitStatus.DONE;
  }
}
