package boreledger.station.bench.model;

import boreledger.station.ledger.LedgerFault;
import boreledger.station.results.JobResults;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Asks for results in the background, one question at a time: however often it is asked meanwhile,
 * one more question follows.
 */
final class ResultsFeed {
  private final ResultsSource source;
  private final Executor background;
  private final Executor screen;
  private final Consumer<JobResults> received;
  private final Consumer<String> failed;
  private boolean asking;
  private boolean askAgain;

  /**
   * A feed whose answers come on the screen's thread.
   *
   * @param failed takes the message when there is no answer
   */
  ResultsFeed(
      ResultsSource source,
      Executor background,
      Executor screen,
      Consumer<JobResults> received,
      Consumer<String> failed) {
    this.source = source;
    this.background = background;
    this.screen = screen;
    this.received = received;
    this.failed = failed;
  }

  void ask() {
    if (asking) {
      askAgain = true;
      return;
    }
    asking = true;
    background.execute(this::compute);
  }

  private void compute() {
    try {
      Optional<JobResults> results = source.results();
      screen.execute(() -> answered(() -> results.ifPresent(received)));
    } catch (LedgerFault | RuntimeException e) {
      screen.execute(
          () ->
              answered(
                  () -> failed.accept(e.getMessage() == null ? e.toString() : e.getMessage())));
    }
  }

  private void answered(Runnable answer) {
    asking = false;
    answer.run();
    if (askAgain) {
      askAgain = false;
      ask();
    }
  }
}
