package boreledger.station.audit;

import boreledger.drivers.line.Bytes;
import boreledger.station.ledger.Chain;
import boreledger.station.ledger.StoredRow;

/** Follows the hash chain from row to row. Each break is told once, where it is. */
final class ChainWalk {
  private final Remarks remarks;
  private long seq;
  private Bytes hash;

  ChainWalk(Remarks remarks) {
    this(remarks, 0, Chain.ORIGIN);
  }

  /** A walk that goes on after a row. */
  ChainWalk(Remarks remarks, long seq, Bytes hash) {
    this.remarks = remarks;
    this.seq = seq;
    this.hash = hash;
  }

  void accept(StoredRow row) {
    if (row.seq() != seq + 1) {
      remarks.finding(row.seq(), "follows entry " + seq + ": " + gap(row.seq()));
    }
    Bytes expected = row.link(hash);
    if (!expected.equals(row.hash())) {
      remarks.finding(
          row.seq(),
          "its hash does not follow from its body and the entry before: computed "
              + expected
              + ", stored "
              + row.hash());
    }
    seq = row.seq();
    hash = row.hash();
  }

  /** The last row's number; 0 before the first. */
  long seq() {
    return seq;
  }

  /** The last row's stored hash. */
  Bytes hash() {
    return hash;
  }

  private String gap(long next) {
    long missing = next - seq - 1;
    return missing > 0 ? missing + " missing between" : "no number of a ledger's entry";
  }
}
