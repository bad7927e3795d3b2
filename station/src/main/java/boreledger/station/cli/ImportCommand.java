package boreledger.station.cli;

import boreledger.drivers.file.FileProblem;
import boreledger.station.app.UsageProblem;
import boreledger.station.keeping.Import;
import boreledger.station.keeping.Import.Report;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Another ledger's entries. */
@Command(
    name = "import",
    description = "Brings another ledger's entries into this one, with their proof.",
    footer = {
      "",
      "The file is a JSON export. Its chain is followed to the head before anything is written; the",
      "entries are kept exactly as they were, and their sessions are read like any others. The same",
      "export again adds nothing, a later one of the same ledger what is new. End bench and capture",
      "on this ledger first.",
      "Example: boreledger import --ledger shop.db --file bench-two.json --who \"A. Turner\""
    })
final class ImportCommand implements Callable<Integer> {
  @ParentCommand private Boreledger program;
  @Mixin private Answer answer;

  @Option(
      names = "--ledger",
      required = true,
      paramLabel = "FILE",
      description = "The ledger that they go into.")
  private Path ledger;

  @Option(
      names = "--file",
      required = true,
      paramLabel = "FILE",
      description = "The other ledger's export.")
  private Path file;

  @Option(names = "--who", paramLabel = "WHO", description = "Who brings them in.")
  private String who;

  @Option(names = "--create", description = "Make the ledger when there is none.")
  private boolean create;

  @Override
  public Integer call() throws LedgerFault, FileProblem, UsageProblem {
    boolean fresh = !Files.exists(ledger);
    if (fresh && !create) {
      throw new LedgerFault(ledger + ": there is no such ledger; --create makes one");
    }
    LongWork work = new LongWork(answer, "entries read");
    program.interruption().stopBy(work::stop);
    Import importing = new Import(file, who, Clock.systemUTC());
    if (fresh) {
      importing.check(work);
    }
    try (Ledger open = Ledger.openOrCreate(ledger)) {
      Report report = importing.into(open, work);
      answer.print(report, report.words());
      return ExitStatus.DONE;
    }
  }
}
