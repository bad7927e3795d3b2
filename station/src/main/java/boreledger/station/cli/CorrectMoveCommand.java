package boreledger.station.cli;

import boreledger.station.app.LedgerBook;
import boreledger.station.app.UsageProblem;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.session.Correction;
import boreledger.station.session.Correction.NotPossible;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Says that a reading was taken at another place. */
@Command(
    name = "move",
    description = "Says that a reading was taken at another place of its session's plan.",
    footer = {
      "",
      "A place that has a reading takes no second one: take that reading back first. Two readings",
      "that were mixed up: take one back, move the other, restore the first and move it.",
      "Example: boreledger correct move --ledger bench.db --entry 23 --to \"cylinder 2, 60 mm, pin\"",
      "  --why \"wrong cylinder\" --who \"A. Turner\""
    })
final class CorrectMoveCommand implements Callable<Integer> {
  @Mixin private Answer answer;
  @Mixin private LedgerOption ledger;
  @Mixin private CorrectionReason reason;

  @Option(
      names = "--entry",
      required = true,
      paramLabel = "N",
      description = "The entry of the reading.")
  private long entry;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "PLACE",
      description = "Where it was taken, such as \"cylinder 2, 60 mm, pin\".")
  private String to;

  /**
   * The answer.
   *
   * @param done {@code moved}
   * @param entry the correction's entry
   * @param reading the reading's entry
   * @param position where it stands now
   */
  record Answered(String done, long entry, long reading, String position, double valueMm) {}

  @Override
  public Integer call() throws LedgerFault, UsageProblem {
    try {
      Correction.Done done =
          new LedgerBook(ledger.path())
              .move(entry, to, reason.why(), reason.who(), Clock.systemUTC());
      answer.print(
          new Answered(done.done(), done.entry(), done.reading(), done.position(), done.valueMm()),
          done.words());
      return ExitStatus.DONE;
    } catch (NotPossible e) {
      throw new UsageProblem(e.getMessage());
    }
  }
}
