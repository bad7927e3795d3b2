package boreledger.station.cli;

import boreledger.drivers.line.LineFault;
import boreledger.station.app.Play;
import boreledger.station.app.StoredJobs;
import boreledger.station.app.UsageProblem;
import boreledger.station.bench.BenchApplication;
import boreledger.station.bench.BenchWiring;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.HeldAnswers;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.results.JobResults;
import boreledger.station.session.Outcome;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;

/** Shows some gauging in the bench window while it goes on. */
final class Window implements HeldAnswers {
  private final Path ledger;
  private final Work work;
  private final Consumer<GaugingEvent> watcher;
  private volatile Play play;
  private volatile FutureTask<JobResults> task;

  /** Some gauging. */
  @FunctionalInterface
  interface Work {
    /** Gauges to the end, or until the play is stopped. */
    JobResults run(Play play) throws Exception;
  }

  private Window(Path ledger, Work work, Consumer<GaugingEvent> watcher) {
    this.ledger = ledger;
    this.work = work;
    this.watcher = watcher;
  }

  /** Whether there is a display to open a window on. */
  static boolean canOpen() {
    boolean linux = System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("linux");
    String display = System.getenv("DISPLAY");
    return !linux || display != null && !display.isBlank();
  }

  /**
   * Opens the window, does the work on a thread of its own, and returns when the window is closed.
   *
   * @param ledger where the work goes
   * @param watcher told everything that the window is told
   */
  static JobResults show(Path ledger, Work work, Consumer<GaugingEvent> watcher) throws Exception {
    Window window = new Window(ledger, work, watcher);
    BenchApplication.show(new BenchWiring(window::results, window, window::begin, window::stop));
    return window.finished();
  }

  @Override
  public void confirm(Outcome.Held held) {
    play.confirm(held);
  }

  @Override
  public void leave(Outcome.Held held) {
    // It stands in the ledger as a refused sample already, and its position still waits.
  }

  private void begin(BenchModel model) {
    play = new Play(watcher.andThen(model::accept));
    task = new FutureTask<>(() -> telling(model));
    new Thread(task, "gauging").start();
  }

  /** Does the work, and tells the window when it fails. */
  private JobResults telling(BenchModel model) throws Exception {
    try {
      return work.run(play);
    } catch (LedgerFault | LineFault e) {
      model.fail(e.getMessage());
      throw e;
    }
  }

  private void stop() {
    play.stop();
  }

  private JobResults finished() throws Exception {
    try {
      return task.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Exception cause) {
        throw cause;
      }
      throw e;
    }
  }

  private JobResults results() throws LedgerFault {
    try (LedgerView view = LedgerView.open(ledger)) {
      return new StoredJobs(view).latestResults();
    } catch (UsageProblem e) {
      throw new LedgerFault(e.getMessage(), e);
    }
  }
}
