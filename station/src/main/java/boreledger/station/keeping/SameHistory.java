package boreledger.station.keeping;

import boreledger.drivers.file.FileProblem;
import boreledger.station.ledger.ChainRow;
import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.ImportedEntry;
import boreledger.station.ledger.ImportNumbers;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import java.nio.file.Path;

/**
 * Whether an export goes on where what is known of the same ledger ends. One entry tells: its hash
 * stands for everything before it.
 */
final class SameHistory {
  private final Path file;
  private final long at;
  private final String hash;
  private final boolean own;

  private SameHistory(Path file, long at, String hash, boolean own) {
    this.file = file;
    this.at = at;
    this.hash = hash;
    this.own = own;
  }

  /**
   * What to hold an export against.
   *
   * @param numbers what was imported from the ledger that it names
   * @throws FileProblem if it is a longer one of this very ledger
   */
  static SameHistory of(LedgerView view, ExportFile.Header told, ImportNumbers numbers, Path file)
      throws LedgerFault, FileProblem {
    if (told.ledger().equals(view.id())) {
      long last = view.entries();
      if (told.entries() > last) {
        throw refused(file, "it is of this very ledger and knows more of it; restore a backup");
      }
      String hash = view.entry(told.entries()).map(entry -> entry.hash().toHex()).orElse(null);
      return new SameHistory(file, told.entries(), hash, true);
    }
    long common = Math.min(numbers.last(), told.entries());
    return new SameHistory(file, common, imported(view, numbers.own(common)), false);
  }

  /** Whether the export is of the ledger that it was to be brought into. */
  boolean isOwn() {
    return own;
  }

  /** Looks at the next entry of the export. */
  void look(ChainRow row) throws FileProblem {
    if (row.seq() == at && !row.hash().toHex().equals(hash)) {
      throw refused(
          file,
          "it tells another history of the ledger "
              + (own ? "that it goes into" : "that was imported before")
              + ": entry "
              + at
              + " differs there or before it; find out which one was altered");
    }
  }

  private static String imported(LedgerView view, long own) throws LedgerFault {
    return view.entry(own)
        .map(Entry::body)
        .map(body -> body instanceof ImportedEntry entry ? entry.hash() : null)
        .orElse(null);
  }

  private static FileProblem refused(Path file, String what) {
    return FileProblem.of(file.toString(), "is not taken: " + what, null);
  }
}
