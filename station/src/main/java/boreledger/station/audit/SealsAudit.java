package boreledger.station.audit;

import boreledger.drivers.line.Bytes;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.ImportedEntry;
import boreledger.station.ledger.EntryBody.Sealed;
import boreledger.station.ledger.ImportedChains;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.StoredRow;
import boreledger.station.seal.Seal;
import boreledger.station.seal.Seal.NoSeal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Compares seals with the ledger. */
final class SealsAudit {
  private final Rows rows;
  private final ImportedChains imported;
  private final Set<Bytes> known;
  private final Remarks remarks;
  private final List<Met> met = new ArrayList<>();
  private String ledger;

  /** A seal and whether it holds. */
  private record Met(String from, Seal seal, boolean holds) {}

  SealsAudit(Rows rows, ImportedChains imported, Set<Bytes> known, Remarks remarks) {
    this.rows = rows;
    this.imported = imported;
    this.known = Set.copyOf(known);
    this.remarks = remarks;
  }

  /** One for seals deeper inside. */
  SealsAudit within(Rows other, ImportedChains chains, Remarks inside) {
    return new SealsAudit(other, chains, known, inside);
  }

  /** The ledger's id, as its first entry has it. */
  void ledger(String id) {
    ledger = id;
  }

  /** A seal that is kept in the ledger. */
  void kept(long seq, Sealed kept) throws LedgerFault {
    kept("entry " + seq, seq, seq, ledger, kept);
  }

  /**
   * A seal that came with the entries of another ledger.
   *
   * @param of that ledger's id
   * @param from its entry there
   * @param kept the seal, which names an entry of that ledger by its number there
   */
  void imported(long seq, String of, ImportedEntry from, Sealed kept) throws LedgerFault {
    String where = "entry " + seq + ", " + from.number() + " of ledger " + of;
    kept(where, seq, from.number(), of, kept);
  }

  /** A seal that was kept elsewhere, of this ledger or of one that was imported. */
  void elsewhere(String from, Seal seal) throws LedgerFault {
    long last = seal.ledger().equals(ledger) ? 0 : imported.numbers(seal.ledger()).last();
    if (last > 0 && seal.entry() > last && seal.isGenuine()) {
      remarks.notice(
          null,
          named(from, seal)
              + " goes up to entry "
              + seal.entry()
              + " of ledger "
              + seal.ledger()
              + ", of which only "
              + last
              + " were imported: import a later export to check it");
      met.add(new Met(from, seal, false));
    } else {
      judge(from, null, seal, wrong(seal, last > 0 ? seal.ledger() : ledger));
    }
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
                    Math.max(0, last(each.seal(), lastEntry) - each.seal().entry()),
                    each.seal().keyText(),
                    known.contains(each.seal().key()),
                    each.holds()))
        .toList();
  }

  private long last(Seal seal, long lastEntry) {
    long last = imported.numbers(seal.ledger()).last();
    return last > 0 ? last : lastEntry;
  }

  private void kept(String where, long seq, long number, String of, Sealed kept)
      throws LedgerFault {
    try {
      Seal seal = Seal.of(kept);
      String wrong =
          kept.entry() < number
              ? wrong(seal, of)
              : "seals entry " + kept.entry() + ", which came later";
      judge(where, seq, seal, wrong);
    } catch (NoSeal e) {
      remarks.finding(seq, e.getMessage());
    }
  }

  private void judge(String from, Long seq, Seal seal, String wrong) {
    String who = named(from, seal);
    if (wrong != null) {
      remarks.finding(seq, who + " does not hold: " + wrong);
    } else if (!known.contains(seal.key())) {
      String another = sealedBeforeByAnotherKey(seal) ? " and not the one of that name before" : "";
      remarks.notice(
          seq,
          who
              + " is by a key that is not known here"
              + another
              + ", "
              + seal.keyText()
              + ": ask "
              + seal.name());
    }
    if (met.size() < Remarks.MOST_KEPT) {
      met.add(new Met(from, seal, wrong == null));
    }
  }

  private boolean sealedBeforeByAnotherKey(Seal seal) {
    return met.stream()
        .map(Met::seal)
        .anyMatch(other -> other.name().equals(seal.name()) && !other.key().equals(seal.key()));
  }

  private static String named(String from, Seal seal) {
    return "the seal of " + seal.name() + " (" + from + ")";
  }

  /** What is wrong with a seal of a ledger; null when nothing is. */
  private String wrong(Seal seal, String of) throws LedgerFault {
    if (!seal.isGenuine()) {
      return "its signature is wrong";
    }
    if (!seal.ledger().equals(of)) {
      return "it is of ledger "
          + seal.ledger()
          + ", this one is "
          + of
          + "; it is another one, or was written anew";
    }
    String hash = of.equals(ledger) ? ownHash(seal.entry()) : importedHash(of, seal.entry());
    if (hash == null) {
      return "entry " + seal.entry() + " was sealed and is gone; the tail was cut off";
    }
    return hash.equals(seal.head().toHex())
        ? null
        : "entry "
            + seal.entry()
            + " had the hash "
            + seal.head()
            + ", it has "
            + hash
            + "; the ledger was written anew";
  }

  private String ownHash(long entry) throws LedgerFault {
    return rows.row(entry).map(row -> row.hash().toHex()).orElse(null);
  }

  /** The hash that an entry of another ledger has there. */
  private String importedHash(String of, long entry) throws LedgerFault {
    Optional<StoredRow> row = rows.row(imported.numbers(of).own(entry));
    EntryBody body = row.isEmpty() ? null : row.get().read();
    return body instanceof ImportedEntry from ? from.hash() : null;
  }
}
