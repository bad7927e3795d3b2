package boreledger.station.audit;

/** Watches an audit, and may stop it. */
@FunctionalInterface
public interface AuditProgress {
  /**
   * Is told how far it is, often.
   *
   * @param entries how many entries were checked
   * @param of how many there are
   * @return whether to go on
   */
  boolean at(long entries, long of);
}
