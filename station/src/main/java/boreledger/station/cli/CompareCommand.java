package boreledger.station.cli;

import boreledger.station.app.CompareSessions;
import boreledger.station.app.UsageProblem;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.results.ComparisonText;
import boreledger.station.results.SessionComparison;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Two sessions of the same bores or gaps. */
@Command(
    name = "compare",
    description = "Says what changed between two sessions of the same bores or gaps.",
    footer = {
      "",
      "A change beyond its uncertainty is called grew or shrank. With --job the job's two latest",
      "bore sessions are taken. What was read in one session only is listed.",
      "Example: boreledger compare --ledger bench.db --session 7 --with 52"
    })
final class CompareCommand implements Callable<Integer> {
  @Mixin private Answer answer;

  @Option(names = "--ledger", required = true, paramLabel = "FILE", description = "The ledger.")
  private Path ledger;

  @Option(names = "--session", paramLabel = "N", description = "The session before.")
  private Long session;

  @Option(names = "--with", paramLabel = "N", description = "The session after.")
  private Long with;

  @Option(
      names = "--other-ledger",
      paramLabel = "FILE",
      description = "Where the session after stands, when it is another ledger.")
  private Path otherLedger;

  @Option(names = "--job", paramLabel = "NAME", description = "The job, instead of two sessions.")
  private String job;

  @Override
  public Integer call() throws LedgerFault, UsageProblem {
    boolean two = session != null && with != null && job == null;
    boolean ofJob = job != null && session == null && with == null && otherLedger == null;
    if (!two && !ofJob) {
      throw new UsageProblem("name two sessions with --session and --with, or a job with --job");
    }
    try (LedgerView view = LedgerView.open(ledger);
        LedgerView other = LedgerView.open(otherLedger == null ? ledger : otherLedger)) {
      SessionComparison comparison =
          ofJob
              ? CompareSessions.latest(view, job)
              : CompareSessions.of(view, session, other, with);
      answer.print(comparison, ComparisonText.of(comparison));
      return ExitStatus.attentionIf(!comparison.cautions().isEmpty());
    }
  }
}
