package boreledger.station.cli;

import boreledger.station.app.StoredJobs;
import boreledger.station.app.UsageProblem;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.results.JobResults;
import boreledger.station.results.ResultsText;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What the readings in a ledger mean. */
@Command(
    name = "results",
    description = "Says what the readings in a ledger mean.",
    footer = {"", "Example: boreledger results --ledger bench.db --job \"Pumphouse three\""})
final class ResultsCommand implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(
      names = "--ledger",
      required = true,
      paramLabel = "FILE",
      description = "The ledger to read.")
  private Path ledger;

  @Option(
      names = "--job",
      paramLabel = "NAME",
      description = "The job's name, when the ledger has several.")
  private String job;

  @Option(
      names = "--budgets",
      description = "Show the uncertainty budget of every diameter, check and gap, line by line.")
  private boolean budgets;

  @Override
  public Integer call() throws LedgerFault, UsageProblem {
    try (LedgerView view = LedgerView.open(ledger)) {
      JobResults results = new StoredJobs(view).results(job);
      answer.print(results, ResultsText.of(results, budgets));
      return ExitStatus.attentionIf(results.attention());
    }
  }
}
