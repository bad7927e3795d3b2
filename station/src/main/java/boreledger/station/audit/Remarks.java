package boreledger.station.audit;

import java.util.ArrayList;
import java.util.List;

/** Collects findings and notices. Only the first ones are kept; all are counted. */
class Remarks {
  /** A ledger that is wrong throughout must not fill the memory. */
  static final int MOST_KEPT = 1000;

  private final List<Remark> findings = new ArrayList<>();
  private final List<Remark> notices = new ArrayList<>();
  private long findingsInAll;
  private long noticesInAll;

  /** The number that an entry has in the ledger that is audited. */
  long here(long seq) {
    return seq;
  }

  void finding(Long entry, String what) {
    findingsInAll++;
    keep(findings, entry, what);
  }

  void notice(Long entry, String what) {
    noticesInAll++;
    keep(notices, entry, what);
  }

  List<Remark> findings() {
    return List.copyOf(findings);
  }

  List<Remark> notices() {
    return List.copyOf(notices);
  }

  long findingsInAll() {
    return findingsInAll;
  }

  long noticesInAll() {
    return noticesInAll;
  }

  private static void keep(List<Remark> kept, Long entry, String what) {
    if (kept.size() < MOST_KEPT) {
      kept.add(new Remark(entry, what));
    }
  }
}
