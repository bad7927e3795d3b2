package boreledger.station.audit;

/** An audit was stopped before its end; nothing is known of the rest. */
public final class AuditStopped extends Exception {
  private static final long serialVersionUID = 1L;

  AuditStopped(long entries, long of) {
    super("stopped after " + entries + " of " + of + " entries: the ledger is not audited");
  }
}
