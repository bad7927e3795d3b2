package boreledger.station.cli;

import boreledger.station.app.UsageProblem;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.session.Correction;
import boreledger.station.session.Correction.NotPossible;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Takes a reading back. */
@Command(
    name = "take-back",
    description = "Takes a reading back, with a reason. It stays in the ledger and counts no more.",
    footer = {
      "",
      "Its position is gauged again when the session is resumed by capture or bench.",
      "Example: boreledger take-back --ledger bench.db --entry 23 --why \"chip under the anvil\"",
      "  --who \"A. Turner\""
    })
final class TakeBackCommand implements Callable<Integer> {
  @Mixin private Answer answer;
  @Mixin private LedgerOption ledger;
  @Mixin private CorrectionReason reason;

  @Option(
      names = "--entry",
      required = true,
      paramLabel = "N",
      description = "The entry of the reading; with --restore, of a reading that was taken back.")
  private long entry;

  @Option(names = "--restore", description = "Let a reading that was taken back count again.")
  private boolean restore;

  /**
   * The answer.
   *
   * @param done {@code taken-back} or {@code restored}
   * @param entry the correction's entry
   * @param reading the reading's entry
   */
  record Answered(String done, long entry, long reading, String position, double valueMm) {}

  @Override
  public Integer call() throws LedgerFault, UsageProblem {
    try (Ledger open = Ledger.open(ledger.path())) {
      Correction correction = new Correction(open, reason.why(), reason.who(), Clock.systemUTC());
      Correction.Done done = restore ? correction.restore(entry) : correction.takeBack(entry);
      answer.print(
          new Answered(done.done(), done.entry(), done.reading(), done.position(), done.valueMm()),
          done.words());
      return ExitStatus.DONE;
    } catch (NotPossible e) {
      throw new UsageProblem(e.getMessage());
    }
  }
}
