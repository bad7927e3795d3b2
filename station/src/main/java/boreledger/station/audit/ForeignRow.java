package boreledger.station.audit;

import boreledger.drivers.line.Bytes;
import boreledger.station.ledger.EntryBody.ImportedEntry;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.StoredRow;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** A row of another ledger as it stood there. */
final class ForeignRow {
  private ForeignRow() {}

  static StoredRow of(ImportedEntry entry) {
    Bytes body = Bytes.of(entry.body().getBytes(StandardCharsets.UTF_8));
    return new StoredRow(entry.number(), body, Bytes.EMPTY);
  }

  /** The one that a row holds; empty when it holds none. */
  static Optional<StoredRow> in(StoredRow row) throws LedgerFault {
    return row.read() instanceof ImportedEntry entry ? Optional.of(of(entry)) : Optional.empty();
  }
}
