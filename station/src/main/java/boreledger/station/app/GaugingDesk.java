package boreledger.station.app;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.LineFault;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingRun;
import boreledger.station.gauging.Wish;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.results.JobResults;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;

/**
 * Gaugings that a window starts and stops: one at a time, each on a thread of its own. Its methods
 * may be called from any thread.
 */
public final class GaugingDesk implements EntryWriter {
  private final Consumer<GaugingEvent> watcher;
  private final Consumer<String> failed;
  private Play play;
  private FutureTask<JobResults> task;

  /** Some gauging. */
  @FunctionalInterface
  public interface Work {
    /** Gauges to the end, or until the play is stopped. */
    JobResults run(Play play) throws Exception;
  }

  /**
   * A desk with nothing on it.
   *
   * @param watcher told what happens, on the gauging's thread
   * @param failed told in one line why a gauging failed, on the same thread
   */
  public GaugingDesk(Consumer<GaugingEvent> watcher, Consumer<String> failed) {
    this.watcher = watcher;
    this.failed = failed;
  }

  /** Begins some work; false, and nothing is done, while another goes on. */
  public synchronized boolean begin(Work work) {
    if (isBusy()) {
      return false;
    }
    Play begun = new Play(watcher);
    FutureTask<JobResults> begunTask = new FutureTask<>(() -> telling(work, begun));
    play = begun;
    task = begunTask;
    new Thread(begunTask, "gauging").start();
    return true;
  }

  /** Whether something is being gauged. */
  public synchronized boolean isBusy() {
    return task != null && !task.isDone();
  }

  /**
   * Asks what is being gauged for something besides gauging; its watcher is told what came of it.
   * While nothing is being gauged nothing is done.
   */
  public synchronized void wish(Wish wish) {
    if (play != null) {
      play.wish(wish);
    }
  }

  /** Has the watcher told of something in one line, while something is being gauged. */
  public synchronized void notice(String what) {
    if (play != null) {
      play.notice(what);
    }
  }

  /** Stops what is being gauged soon; it can be resumed. */
  public synchronized void stop() {
    if (play != null) {
      play.stop();
    }
  }

  /**
   * Writes what is said besides gauging: while something is being gauged into the same ledger, on
   * the thread that writes it, between two readings; else by itself. Of a session that is being
   * gauged just now only filing is noted: it could not go on over a correction that it does not
   * know of.
   */
  @Override
  public long write(Path ledger, List<EntryBody> bodies) throws LedgerFault, UsageProblem {
    CompletableFuture<Long> entry;
    synchronized (this) {
      if (!isBusy()) {
        return EntryWriter.BY_ITSELF.write(ledger, bodies);
      }
      GaugingRun run = play.current().orElseThrow(GaugingDesk::notNow);
      Optional<CompletableFuture<Long>> asked = run.keep(ledger, bodies);
      if (asked.isEmpty()) {
        return EntryWriter.BY_ITSELF.write(ledger, bodies);
      }
      entry = asked.get();
    }
    return waitedFor(entry);
  }

  private static long waitedFor(CompletableFuture<Long> entry) throws LedgerFault, UsageProblem {
    try {
      return entry.get();
    } catch (ExecutionException e) {
      throw e.getCause() instanceof LedgerFault fault
          ? fault
          : new LedgerFault("not written: " + e.getCause().getMessage(), e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw notNow();
    }
  }

  private static UsageProblem notNow() {
    return new UsageProblem("a gauging is just beginning or ending; try again in a moment");
  }

  /**
   * Waits for the last gauging that was begun.
   *
   * @return its results; empty when none was begun
   * @throws Exception what it failed with
   */
  public Optional<JobResults> lastResults() throws Exception {
    FutureTask<JobResults> last;
    synchronized (this) {
      last = task;
    }
    if (last == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(last.get());
    } catch (ExecutionException e) {
      if (e.getCause() instanceof Exception cause) {
        throw cause;
      }
      throw e;
    }
  }

  private JobResults telling(Work work, Play begun) throws Exception {
    try {
      return work.run(begun);
    } catch (LedgerFault | LineFault | FileProblem | UsageProblem e) {
      failed.accept(e.getMessage());
      throw e;
    } catch (RuntimeException e) {
      // Nobody may ask for the results before the window is closed.
      failed.accept("gauging was given up, " + e + "; start again to go on with it");
      throw e;
    }
  }
}
