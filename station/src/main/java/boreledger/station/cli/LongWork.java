package boreledger.station.cli;

import boreledger.station.keeping.Progress;
import boreledger.station.keeping.Stopped;
import java.util.concurrent.TimeUnit;

/** Tells long work on standard error now and then, and stops it when the program is interrupted. */
final class LongWork implements Progress {
  private static final long EVERY_NS = TimeUnit.SECONDS.toNanos(2);

  private final Answer answer;
  private final String what;
  private long lastToldNs = System.nanoTime();
  private volatile boolean stopped;

  /**
   * Work that has only begun.
   *
   * @param what is counted, such as {@code entries read}
   */
  LongWork(Answer answer, String what) {
    this.answer = answer;
    this.what = what;
  }

  /** Stops the work at the next step. */
  void stop() {
    stopped = true;
  }

  @Override
  public void passed(long done) {
    if (stopped) {
      throw new Stopped();
    }
    long nowNs = System.nanoTime();
    if (nowNs - lastToldNs > EVERY_NS) {
      lastToldNs = nowNs;
      answer.tell(done + " " + what);
    }
  }
}
