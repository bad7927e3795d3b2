package boreledger.station.cli;

import boreledger.station.audit.AuditProgress;

/** Tells how far an audit is, now and then, on standard error. */
final class AuditLines implements AuditProgress {
  private static final long QUIET_NS = 5_000_000_000L;
  private static final long SOON_NS = 1_000_000_000L;

  private final Answer answer;
  private final long everyNs;
  private long toldNs = System.nanoTime();
  private volatile boolean stopped;

  /**
   * @param watched whether a person sits at a terminal and wants to hear of it sooner
   */
  AuditLines(Answer answer, boolean watched) {
    this.answer = answer;
    this.everyNs = watched ? SOON_NS : QUIET_NS;
  }

  /** Stops the audit soon. */
  void stop() {
    stopped = true;
  }

  @Override
  public boolean at(long entries, long of) {
    long nowNs = System.nanoTime();
    if (nowNs - toldNs >= everyNs) {
      toldNs = nowNs;
      answer.tell("checked " + entries + " of " + of + " entries");
    }
    return !stopped;
  }
}
