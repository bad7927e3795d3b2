package boreledger.station.bench.ledger;

import boreledger.station.bench.words.Told;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * Asks in the background and answers on the screen's thread. Only the last question is answered:
 * whoever asked again does not want the earlier answer.
 */
final class Asking {
  private final Executor background;
  private final Executor screen;
  private final Consumer<String> failed;
  private long asked;

  /**
   * Nothing was asked yet.
   *
   * @param failed takes one line on why there is no answer
   */
  Asking(Executor background, Executor screen, Consumer<String> failed) {
    this.background = background;
    this.screen = screen;
    this.failed = failed;
  }

  <T> void ask(Question<T> question, Consumer<T> answered) {
    long number = ++asked;
    background.execute(
        () -> {
          try {
            T answer = question.answer();
            answer(number, () -> answered.accept(answer));
          } catch (Exception e) {
            answer(number, () -> failed.accept(words(e)));
          }
        });
  }

  /** Nobody wants the answer any more. */
  void forget() {
    asked++;
  }

  private void answer(long number, Runnable telling) {
    screen.execute(
        () -> {
          if (number == asked) {
            telling.run();
          }
        });
  }

  /** What went wrong, in words; a fault that nobody foresaw has its name said as well. */
  static String words(Exception e) {
    boolean unforeseen = e instanceof RuntimeException && !(e instanceof CancellationException);
    return unforeseen || e.getMessage() == null ? e.toString() : Told.recorded(e.getMessage());
  }
}
