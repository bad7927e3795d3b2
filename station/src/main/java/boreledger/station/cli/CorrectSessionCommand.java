package boreledger.station.cli;

import boreledger.drivers.file.FileProblem;
import boreledger.station.app.LedgerBook;
import boreledger.station.app.SessionChange;
import boreledger.station.app.UsageProblem;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.results.AmendmentText;
import boreledger.station.session.Correction.NotPossible;
import boreledger.station.session.StoredSession.Amendment;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says that a session should have been opened with something else. */
@Command(
    name = "session",
    description = "Corrects the temperatures or the job file that a session was opened with.",
    footer = {
      "",
      "The job file must be of the same name and plan: its limits, rings and materials may differ.",
      "Temperatures hold to the end, or until a resumption that was given its own.",
      "Example: boreledger correct session --ledger bench.db --session 7 --block-temp 24.5",
      "  --why \"thermometer read wrong\" --who \"A. Turner\""
    })
final class CorrectSessionCommand implements Callable<Integer> {
  @Mixin private Answer answer;
  @Mixin private LedgerOption ledger;
  @Mixin private CorrectionReason reason;

  @Option(
      names = "--session",
      required = true,
      paramLabel = "N",
      description = "The session, by the entry that opened it.")
  private long session;

  @Option(
      names = "--setting-temp",
      paramLabel = "DEGC",
      description = "The setting ring's temperature.")
  private Double settingTempC;

  @Option(names = "--block-temp", paramLabel = "DEGC", description = "The block's temperature.")
  private Double blockTempC;

  @Option(
      names = "--from-entry",
      paramLabel = "N",
      description = "The reading from which on they held; else from the session's beginning.")
  private Long fromEntry;

  @Option(names = "--job", paramLabel = "FILE", description = "The job file that holds.")
  private Path job;

  /**
   * The answer.
   *
   * @param done {@code amended}
   * @param entry the correction's entry
   * @param what what was before and what is now, in one sentence
   */
  record Answered(String done, long entry, long session, String what) {}

  @Override
  public Integer call() throws LedgerFault, UsageProblem, FileProblem {
    try {
      Amendment made =
          new LedgerBook(ledger.path())
              .amend(
                  session,
                  new SessionChange(settingTempC, blockTempC, fromEntry, job),
                  reason.why(),
                  reason.who(),
                  Clock.systemUTC());
      String what = AmendmentText.what(session, made);
      answer.print(
          new Answered("amended", made.seq(), session, what),
          what + " It stands as entry " + made.seq() + ".");
      return ExitStatus.DONE;
    } catch (NotPossible e) {
      throw new UsageProblem(e.getMessage());
    }
  }
}
