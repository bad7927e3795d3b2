package boreledger.station.audit;

import boreledger.drivers.line.Bytes;
import boreledger.station.ledger.EntryBody.Sealed;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerFile;
import boreledger.station.ledger.StoredRow;
import boreledger.station.seal.Seal;
import boreledger.station.seal.Seal.NoSeal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Compares seals with the ledger. */
final class SealsAudit {
  private final LedgerFile file;
  private final Set<Bytes> known;
  private final Remarks remarks;
  private final List<Met> met = new ArrayList<>();
  private String ledger;

  /** A seal and whether it holds. */
  private record Met(String from, Seal seal, boolean holds) {}

  SealsAudit(LedgerFile file, Set<Bytes> known, Remarks remarks) {
    this.file = file;
    this.known = Set.copyOf(known);
    this.remarks = remarks;
  }

  /** The ledger's id, as its first entry has it. */
  void ledger(String id) {
    ledger = id;
  }

  /** A seal that is kept in the ledger. */
  void kept(long seq, Sealed kept) throws LedgerFault {
    try {
      Seal seal = Seal.of(kept);
      String wrong =
          kept.entry() < seq ? wrong(seal) : "seals entry " + kept.entry() + ", which came later";
      judge("entry " + seq, seq, seal, wrong);
    } catch (NoSeal e) {
      remarks.finding(seq, e.getMessage());
    }
  }

  /** A seal that was kept elsewhere. Asked when all entries were seen. */
  void elsewhere(String from, Seal seal) throws LedgerFault {
    judge(from, null, seal, wrong(seal));
  }

  List<SealSeen> seen(long lastEntry) {
    return met.stream()
        .map(
            each ->
                new SealSeen(
                    each.from(),
                    each.seal().name(),
                    each.seal().time().toString(),
                    each.seal().entry(),
                    Math.max(0, lastEntry - each.seal().entry()),
                    each.seal().keyText(),
                    known.contains(each.seal().key()),
                    each.holds()))
        .toList();
  }

  private void judge(String from, Long seq, Seal seal, String wrong) {
    String who = "the seal of " + seal.name() + " (" + from + ")";
    if (wrong != null) {
      remarks.finding(seq, who + " does not hold: " + wrong);
    } else if (!known.contains(seal.key())) {
      remarks.notice(
          seq,
          who + " is by a key that is not known here, " + seal.keyText() + ": ask " + seal.name());
    }
    if (met.size() < Remarks.MOST_KEPT) {
      met.add(new Met(from, seal, wrong == null));
    }
  }

  /** What is wrong with a seal; null when nothing is. */
  private String wrong(Seal seal) throws LedgerFault {
    if (!seal.isGenuine()) {
      return "its signature is wrong";
    }
    if (!seal.ledger().equals(ledger)) {
      return "it is of ledger "
          + seal.ledger()
          + ", this one is "
          + ledger
          + "; it is another one, or was written anew";
    }
    Optional<StoredRow> row = file.row(seal.entry());
    if (row.isEmpty()) {
      return "entry " + seal.entry() + " was sealed and is gone; the tail was cut off";
    }
    Bytes hash = row.get().hash();
    return hash.equals(seal.head())
        ? null
        : "entry "
            + seal.entry()
            + " had the hash "
            + seal.head()
            + ", it has "
            + hash
            + "; the ledger was written anew";
  }
}
