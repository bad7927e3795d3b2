package boreledger.station.app;

import boreledger.station.gauging.Ending;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingRun;
import boreledger.station.gauging.Wish;
import boreledger.station.ledger.LedgerFault;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Whatever is being gauged now, so that another thread can stop it or ask something of it. Several
 * runs may follow each other.
 */
public final class Play {
  private final Consumer<GaugingEvent> watcher;
  private volatile GaugingRun current;
  private volatile boolean stopped;

  /** Nothing yet. */
  public Play(Consumer<GaugingEvent> watcher) {
    this.watcher = watcher;
  }

  /** Stops the present run, and keeps later ones from going on. */
  public void stop() {
    stopped = true;
    GaugingRun run = current;
    if (run != null) {
      run.stop();
    }
  }

  /** Asks the present run for something besides gauging; while there is none nothing is done. */
  public void wish(Wish wish) {
    GaugingRun run = current;
    if (run != null) {
      run.wish(wish);
    }
  }

  /** Has the present run tell of something in one line; while there is none nothing is told. */
  public void notice(String what) {
    GaugingRun run = current;
    if (run != null) {
      run.notice(what);
    }
  }

  /** What is being run now; empty before, between and after runs. */
  Optional<GaugingRun> current() {
    return Optional.ofNullable(current);
  }

  /** Told what happens. */
  public Consumer<GaugingEvent> watcher() {
    return watcher;
  }

  Ending run(GaugingRun run) throws LedgerFault {
    current = run;
    if (stopped) {
      run.stop();
    }
    try {
      return run.run();
    } finally {
      current = null;
    }
  }
}
