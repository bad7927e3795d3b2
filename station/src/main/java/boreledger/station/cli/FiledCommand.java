package boreledger.station.cli;

import boreledger.station.app.EntryWriter;
import boreledger.station.app.FilingBook;
import boreledger.station.app.FilingBook.Kept;
import boreledger.station.app.PassNote;
import boreledger.station.app.UsageProblem;
import boreledger.station.ledger.LedgerFault;
import java.math.BigDecimal;
import java.time.Clock;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Notes a pass with the file. */
@Command(
    name = "filed",
    description = {
      "Notes a pass with the file in the ledger: the turns, and the gap read before and after it.",
      "Gaps are millimetres and are kept with the decimals they are given in."
    },
    footer = {
      "",
      "A slip is withdrawn with --withdraw, --why and --by; nothing is erased. The results, the",
      "build sheet and the room Gaps show the passes that count.",
      "Example: boreledger filed --ledger bench.db --cylinder 1 --ring top --turns 5 --before 0.42",
      "  --after 0.45 --by \"A. Turner\""
    })
final class FiledCommand implements Callable<Integer> {
  @Mixin private Answer answer;
  @Mixin private LedgerOption ledger;

  @Option(names = "--job", paramLabel = "NAME", description = "The job, where there are several.")
  private String job;

  @Option(names = "--cylinder", paramLabel = "N", description = "The cylinder, from 1.")
  private Integer cylinder;

  @Option(names = "--ring", paramLabel = "NAME", description = "The ring.")
  private String ring;

  @Option(names = "--turns", paramLabel = "N", description = "Turns of the crank, or strokes.")
  private Integer turns;

  @Option(names = "--before", paramLabel = "MM", description = "The gap read before the pass.")
  private BigDecimal beforeMm;

  @Option(names = "--after", paramLabel = "MM", description = "The gap read after it.")
  private BigDecimal afterMm;

  @Option(names = "--withdraw", paramLabel = "N", description = "Withdraw the pass of this entry.")
  private Long withdraw;

  @Option(names = "--why", paramLabel = "WORDS", description = "Why it is withdrawn.")
  private String why;

  @Option(names = "--by", required = true, paramLabel = "WHO", description = "Who says so.")
  private String by;

  @Override
  public Integer call() throws LedgerFault, UsageProblem {
    FilingBook book = new FilingBook(ledger.path(), EntryWriter.BY_ITSELF, Clock.systemUTC());
    Kept kept = withdraw == null ? note(book) : withdraw(book);
    answer.print(kept, kept.words());
    return ExitStatus.DONE;
  }

  private Kept note(FilingBook book) throws LedgerFault, UsageProblem {
    boolean whole =
        Stream.of(cylinder, ring, turns, beforeMm, afterMm).allMatch(each -> each != null);
    if (!whole || why != null) {
      throw new UsageProblem(
          "a pass has --cylinder, --ring, --turns, --before and --after, and no --why");
    }
    return book.note(new PassNote(job, cylinder, ring, turns, beforeMm, afterMm, by));
  }

  private Kept withdraw(FilingBook book) throws LedgerFault, UsageProblem {
    boolean none =
        Stream.of(job, cylinder, ring, turns, beforeMm, afterMm).allMatch(each -> each == null);
    if (!none || why == null) {
      throw new UsageProblem("a pass is withdrawn with --withdraw, --why and --by alone");
    }
    return book.withdraw(withdraw, why, by);
  }
}
