package boreledger.station.ledger;

import boreledger.station.ledger.EntryBody.Imported;
import boreledger.station.ledger.EntryBody.ImportedEntry;
import java.util.List;

/** Reads entries that came from other ledgers as if they had been written in this one. */
final class ImportedReading {
  private final List<Entry> imports;

  /** Reads by the entries that open imports. */
  ImportedReading(List<Entry> imports) {
    this.imports = List.copyOf(imports);
  }

  /**
   * The same entry with the body that was imported, in which other entries go by the numbers that
   * they have here. An entry of this ledger's own is left as it is.
   */
  Entry of(Entry entry) throws LedgerFault {
    if (!(entry.body() instanceof ImportedEntry from)) {
      return entry;
    }
    ImportNumbers numbers = ImportNumbers.of(imports, ledger(entry.seq(), from));
    EntryBody body = EntryJson.readRenumbered(entry.seq(), from.body(), numbers::own);
    return new Entry(entry.seq(), body, entry.hash());
  }

  String ledger(long seq, ImportedEntry from) throws LedgerFault {
    return imports.stream()
        .filter(opening -> opening.seq() == from.imported())
        .map(opening -> ((Imported) opening.body()).ledger())
        .findFirst()
        .orElseThrow(
            () ->
                new LedgerFault(
                    "entry " + seq + " belongs to no import: " + from.imported() + " opens none"));
  }
}
