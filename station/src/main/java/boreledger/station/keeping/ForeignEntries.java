package boreledger.station.keeping;

import boreledger.drivers.file.FileProblem;
import boreledger.station.ledger.ChainRow;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.ImportedEntry;
import boreledger.station.ledger.EntryBody.LedgerMade;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.LedgerFault;
import java.util.HashSet;
import java.util.Set;

/** Whether another ledger's entries can be taken over, told before the first one is written. */
final class ForeignEntries {
  private final ExportFile file;
  private final long after;
  private final Set<Long> sessions = new HashSet<>();
  private long newSessions;
  private long newReadings;
  private long fromOthers;

  /**
   * Looks at a file.
   *
   * @param after the last number that was taken over already
   */
  ForeignEntries(ExportFile file, long after) {
    this.file = file;
    this.after = after;
  }

  /** Takes a look at the next entry. */
  void look(ChainRow row) throws FileProblem {
    EntryBody body = read(row);
    if (row.seq() == 1 && !begins(body)) {
      throw file.problem("entry 1 does not begin the ledger that the file names");
    }
    if (body instanceof SessionOpened) {
      sessions.add(row.seq());
    }
    Long session = session(row);
    if (!(body instanceof ImportedEntry) && session != null && !sessions.contains(session)) {
      throw file.problem("entry " + row.seq() + " belongs to session " + session + ", not opened");
    }
    if (row.seq() > after) {
      count(body);
    }
  }

  /** The last number that was taken over already. */
  long after() {
    return after;
  }

  /** How many sessions are new. */
  long newSessions() {
    return newSessions;
  }

  /** How many readings are new. */
  long newReadings() {
    return newReadings;
  }

  /** How many new entries that ledger has itself from others. */
  long fromOthers() {
    return fromOthers;
  }

  private void count(EntryBody body) {
    newSessions += body instanceof SessionOpened ? 1 : 0;
    newReadings += body instanceof EntryBody.ReadingTaken ? 1 : 0;
    fromOthers += body instanceof ImportedEntry ? 1 : 0;
  }

  private boolean begins(EntryBody body) {
    return body instanceof LedgerMade made
        && made.format().equals(EntryBody.FORMAT)
        && made.id().equals(file.told().ledger());
  }

  private EntryBody read(ChainRow row) throws FileProblem {
    try {
      return row.read();
    } catch (LedgerFault e) {
      throw file.problem(e.getMessage() + "; a newer program may have written it");
    }
  }

  private Long session(ChainRow row) throws FileProblem {
    try {
      return row.session();
    } catch (LedgerFault e) {
      throw file.problem(e.getMessage());
    }
  }
}
