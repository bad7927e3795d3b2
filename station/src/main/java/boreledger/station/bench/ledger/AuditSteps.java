package boreledger.station.bench.ledger;

import boreledger.station.audit.AuditProgress;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;

/** Tells the screen how far an audit is, no oftener than the screen keeps up with. */
final class AuditSteps implements AuditProgress {
  private final Executor screen;
  private final AtomicBoolean stop;
  private final Told told;
  private final AtomicBoolean waiting = new AtomicBoolean();
  private volatile boolean ended;

  /** Takes how far it is, on the screen's thread. */
  @FunctionalInterface
  interface Told {
    void at(long entries, long of);
  }

  AuditSteps(Executor screen, AtomicBoolean stop, Told told) {
    this.screen = screen;
    this.stop = stop;
    this.told = told;
  }

  @Override
  public boolean at(long entries, long of) {
    if (waiting.compareAndSet(false, true)) {
      screen.execute(() -> tell(entries, of));
    }
    return !stop.get();
  }

  /** What still waits is not told any more. */
  void end() {
    ended = true;
  }

  private void tell(long entries, long of) {
    waiting.set(false);
    if (!ended) {
      told.at(entries, of);
    }
  }
}
