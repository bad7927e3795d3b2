package boreledger.station.audit;

/**
 * Remarks on what another ledger had itself imported. They go by the entry that holds it here;
 * numbers in their words are the other ledger's.
 */
final class RemarksInside extends Remarks {
  private final Remarks outer;
  private final String prefix;
  private long holder;

  /**
   * Remarks that are handed on.
   *
   * @param ledger the other ledger's id
   */
  RemarksInside(Remarks outer, String ledger) {
    this.outer = outer;
    this.prefix = "in what ledger " + ledger + " had imported, by its numbers: ";
  }

  /** What comes now stands in this entry of the ledger around. */
  void heldBy(long seq) {
    holder = seq;
  }

  @Override
  long here(long seq) {
    return outer.here(holder);
  }

  @Override
  void finding(Long entry, String what) {
    outer.finding(holder, prefix + what);
  }

  @Override
  void notice(Long entry, String what) {
    outer.notice(holder, prefix + what);
  }
}
