package boreledger.station.app;

import boreledger.station.gauging.Ending;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingRun;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.session.Outcome;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Whatever is being gauged now, so that another thread can stop it or answer a held value. Several
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

  /** Takes a held value after all. */
  public void confirm(Outcome.Held held) {
    GaugingRun run = current;
    if (run != null) {
      run.confirm(held);
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
