package boreledger.station.bench.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.station.ledger.LedgerFault;
import boreledger.station.results.JobResults;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import org.junit.jupiter.api.Test;

class ResultsFeedTest {
  private final Queue<Runnable> background = new ArrayDeque<>();
  private final List<String> received = new ArrayList<>();
  private final List<String> failed = new ArrayList<>();
  private int asked;
  private Exception fault;

  private final ResultsFeed feed =
      new ResultsFeed(
          this::compute,
          background::add,
          Runnable::run,
          results -> received.add(results.job()),
          failed::add);

  @Test
  void questionsAskedMeanwhileBecomeOneMore() {
    for (int i = 0; i < 5; i++) {
      feed.ask();
    }
    int rounds = 0;
    for (Runnable next = background.poll(); next != null; next = background.poll()) {
      next.run();
      rounds++;
    }

    assertEquals(2, rounds);
    assertEquals(List.of("1", "2"), received);
  }

  @Test
  void aFaultIsToldAndTheNextQuestionIsAsked() {
    fault = new LedgerFault("bench.db cannot be read");
    feed.ask();
    background.remove().run();
    fault = null;
    feed.ask();
    background.remove().run();

    assertEquals(List.of("bench.db cannot be read"), failed);
    assertEquals(List.of("2"), received);
  }

  @Test
  void anUnexpectedFaultIsToldByItsNameWhenItHasNoMessage() {
    fault = new IllegalStateException();
    feed.ask();
    background.remove().run();

    assertEquals(List.of("java.lang.IllegalStateException"), failed);
  }

  private Optional<JobResults> compute() throws LedgerFault {
    asked++;
    if (fault instanceof LedgerFault ledgerFault) {
      throw ledgerFault;
    } else if (fault instanceof RuntimeException unexpected) {
      throw unexpected;
    }
    return Optional.of(
        new JobResults(
            Integer.toString(asked),
            "",
            "mm",
            List.of(),
            null,
            List.of(),
            List.of(),
            List.of(),
            0,
            false,
            List.of()));
  }
}
