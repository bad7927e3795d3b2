package boreledger.station.audit;

import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.EntryBody.Imported;
import boreledger.station.ledger.EntryBody.ImportedEntry;
import boreledger.station.ledger.EntryBody.LedgerMade;
import boreledger.station.ledger.EntryBody.OfSession;
import boreledger.station.ledger.EntryBody.Sealed;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.ImportedChains;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.StoredRow;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Checks what entries say. What came from another ledger is checked as if it had been written in
 * this one, save that it went by that ledger's clock and was sealed under that ledger's id. What
 * that ledger had imported in turn is checked by its numbers there, and so on inward.
 */
final class ContentsAudit {
  private final ImportedChains imported;
  private final Shelf shelf;
  private final SessionsAudit sessions;
  private final SealsAudit seals;
  private final Remarks remarks;
  private final Instant now;
  private final WallWatch wall;
  private final Map<String, WallWatch> otherWalls = new HashMap<>();
  private final Map<String, ContentsInside> inside = new HashMap<>();
  private final Rows rows;
  private boolean begun;

  ContentsAudit(
      Rows rows,
      ImportedChains imported,
      Shelf shelf,
      SessionsAudit sessions,
      SealsAudit seals,
      Remarks remarks,
      Instant now) {
    this.now = now;
    this.wall = WallWatch.until(now);
    this.rows = rows;
    this.imported = imported;
    this.shelf = shelf;
    this.sessions = sessions;
    this.seals = seals;
    this.remarks = remarks;
  }

  /** Takes the next entry. */
  void accept(StoredRow row) throws LedgerFault {
    boolean first = !begun;
    begun = true;
    EntryBody body = row.read();
    imported.accept(row.seq(), body).ifPresent(wrong -> remarks.finding(row.seq(), wrong));
    if ((body instanceof LedgerMade) != first) {
      remarks.finding(
          row.seq(), "a ledger begins with one entry of the kind ledger, and has no other");
    }
    if (body instanceof ImportedEntry from) {
      foreign(row, from);
    } else {
      own(row.seq(), body);
    }
  }

  private void own(long seq, EntryBody body) throws LedgerFault {
    if (body instanceof LedgerMade made) {
      seals.ledger(made.id());
      made(seq, made, wall);
    } else if (body instanceof Sealed sealed) {
      seals.kept(seq, sealed);
      wall.shows(seq, sealed.wall(), remarks);
    } else if (body instanceof Imported opening) {
      wall.shows(seq, opening.wall(), remarks);
    } else {
      said(seq, body, wall);
    }
  }

  /** What an entry says that came from another ledger. */
  private void foreign(StoredRow row, ImportedEntry from) throws LedgerFault {
    EntryBody body = imported.read(row);
    String ledger = imported.ledgerOf(row.seq(), from);
    if (body instanceof ImportedEntry) {
      inside.computeIfAbsent(ledger, this::inside).accept(row.seq(), ForeignRow.of(from));
      return;
    }
    WallWatch clock = otherWalls.computeIfAbsent(ledger, id -> WallWatch.until(now));
    if (body instanceof LedgerMade made) {
      made(row.seq(), made, clock);
    } else if (body instanceof Sealed sealed) {
      seals.imported(row.seq(), ledger, from, sealed);
      clock.shows(row.seq(), sealed.wall(), remarks);
    } else {
      said(row.seq(), body, clock);
    }
  }

  private void made(long seq, LedgerMade made, WallWatch clock) {
    if (!EntryBody.FORMAT.equals(made.format())) {
      remarks.finding(seq, "says the format " + made.format() + ", not " + EntryBody.FORMAT);
    }
    clock.shows(seq, made.wall(), remarks);
  }

  private void said(long seq, EntryBody body, WallWatch clock) throws LedgerFault {
    if (body instanceof Document document) {
      shelf.keep(seq, document, remarks);
    } else if (body instanceof SessionOpened opened) {
      sessions.opened(seq, opened, clock);
    } else if (body instanceof OfSession said) {
      sessions.said(seq, said, clock);
    }
  }

  private ContentsInside inside(String ledger) {
    ImportedChains chains = imported.within(ledger);
    Rows its =
        number -> {
          Optional<StoredRow> holder = rows.row(imported.numbers(ledger).own(number));
          return holder.isEmpty() ? Optional.empty() : ForeignRow.in(holder.get());
        };
    RemarksInside told = new RemarksInside(remarks, ledger);
    Shelf itsShelf = new Shelf(its, chains);
    return new ContentsInside(
        new ContentsAudit(
            its,
            chains,
            itsShelf,
            sessions.within(itsShelf, new CorrectionsAudit(its, chains, itsShelf), told),
            seals.within(its, chains, told),
            told,
            now),
        told);
  }

  private record ContentsInside(ContentsAudit contents, RemarksInside remarks) {
    void accept(long holder, StoredRow row) throws LedgerFault {
      remarks.heldBy(holder);
      contents.foreign(row, (ImportedEntry) row.read());
    }
  }
}
