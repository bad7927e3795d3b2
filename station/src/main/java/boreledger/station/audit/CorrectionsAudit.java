package boreledger.station.audit;

import boreledger.station.audit.Shelf.Lacking;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Amended;
import boreledger.station.ledger.EntryBody.Filed;
import boreledger.station.ledger.EntryBody.Moved;
import boreledger.station.ledger.EntryBody.OfFiling;
import boreledger.station.ledger.EntryBody.OfSession;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.Restored;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.ledger.EntryBody.Withdrawn;
import boreledger.station.ledger.ImportedChains;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.StoredRow;
import boreledger.station.plan.Position;
import boreledger.station.results.AmendmentText;
import boreledger.station.session.PassCheck;
import boreledger.station.session.StoredSession.Amendment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Checks corrections: that each is of something that stands, and could be said. */
final class CorrectionsAudit {
  private final Rows rows;
  private final ImportedChains imported;
  private final Shelf shelf;
  private final List<StruckReading> struck = new ArrayList<>();
  private final List<CorrectedEntry> corrected = new ArrayList<>();

  CorrectionsAudit(Rows rows, ImportedChains imported, Shelf shelf) {
    this.rows = rows;
    this.imported = imported;
    this.shelf = shelf;
  }

  /** Readings that do not count; the first ones. */
  List<StruckReading> struck() {
    return List.copyOf(struck);
  }

  /** What else was corrected; the first ones. */
  List<CorrectedEntry> corrected() {
    return List.copyOf(corrected);
  }

  static boolean isCorrection(EntryBody body) {
    return body instanceof TakenBack
        || body instanceof Restored
        || body instanceof Moved
        || body instanceof Amended
        || body instanceof OfFiling;
  }

  /** What is wrong with an entry of a session; empty when nothing is, or it is no correction. */
  Optional<String> wrong(long seq, OfSession body, SessionWatch session) throws LedgerFault {
    if (body instanceof TakenBack back) {
      return takenBack(seq, back, session);
    } else if (body instanceof Restored restored) {
      struck.removeIf(each -> each.entry() == restored.entry());
      return session.restore(restored.entry());
    } else if (body instanceof Moved moved) {
      return moved(seq, moved, session);
    }
    return body instanceof Amended amended
        ? amended(seq, amended, session)
        : filing(seq, body, session);
  }

  private Optional<String> filing(long seq, OfSession body, SessionWatch session)
      throws LedgerFault {
    if (body instanceof Filed pass) {
      session.filed(seq);
      return filed(pass, session);
    }
    return body instanceof Withdrawn withdrawn
        ? session.withdraw(withdrawn.entry())
        : Optional.empty();
  }

  private Optional<String> filed(Filed pass, SessionWatch session) throws LedgerFault {
    try {
      return PassCheck.fault(pass, shelf.job(session.job(), session.opened()));
    } catch (Lacking e) {
      return Optional.of(e.getMessage());
    }
  }

  private Optional<String> takenBack(long seq, TakenBack back, SessionWatch session)
      throws LedgerFault {
    Optional<ReadingTaken> reading = readingOf(back.session(), back.entry());
    if (reading.isEmpty()) {
      return Optional.of("takes back entry " + back.entry() + ", no reading of its session");
    }
    Optional<String> wrong = session.takeBack(back.entry(), reading.get().position());
    if (wrong.isEmpty() && struck.size() < Remarks.MOST_KEPT) {
      String where = reading.get().position().words();
      struck.add(
          new StruckReading(
              back.entry(), where, reading.get().valueMm(), seq, back.why(), back.who()));
    }
    return wrong;
  }

  private Optional<String> moved(long seq, Moved moved, SessionWatch session) throws LedgerFault {
    Optional<ReadingTaken> reading = readingOf(moved.session(), moved.entry());
    if (reading.isEmpty()) {
      return Optional.of("moves entry " + moved.entry() + ", no reading of its session");
    }
    Position from = session.place(moved.entry(), reading.get().position());
    Optional<String> wrong =
        session.move(moved.entry(), reading.get().position(), moved.position());
    if (wrong.isEmpty()) {
      String what =
          String.format(
              Locale.ROOT,
              "Entry %d was moved from %s to %s.",
              moved.entry(),
              from.words(),
              moved.position().words());
      keep(seq, moved.entry(), what, moved.why(), moved.who(), moved);
    }
    return wrong;
  }

  private Optional<String> amended(long seq, Amended amended, SessionWatch session)
      throws LedgerFault {
    if (amended.settingTempC() == null && amended.blockTempC() == null && amended.job() == null) {
      return Optional.of("amends nothing of session " + amended.session());
    } else if (!(amended.tS() >= 0)) {
      return Optional.of("amends session " + amended.session() + " from before it was opened");
    }
    Optional<String> temperature =
        SessionsAudit.noTemperature(amended.settingTempC(), amended.blockTempC());
    if (temperature.isPresent()) {
      return temperature;
    }
    Optional<String> wrong = wrongJob(amended, session.opened());
    if (wrong.isEmpty()) {
      Amendment amendment = session.amend(seq, amended);
      String what = AmendmentText.what(amended.session(), amendment);
      keep(seq, amended.session(), what, amended.why(), amended.who(), amended);
    }
    return wrong;
  }

  private Optional<String> wrongJob(Amended amended, SessionOpened opened) throws LedgerFault {
    if (amended.job() == null) {
      return Optional.empty();
    }
    try {
      if (!shelf.job(amended.job(), opened).name().equals(opened.jobName())) {
        return Optional.of("amends session " + amended.session() + " to a job of another name");
      } else if (!shelf.plan(amended.job(), opened).equals(shelf.plan(opened.job(), opened))) {
        return Optional.of("amends session " + amended.session() + " to a job of another plan");
      }
      return Optional.empty();
    } catch (Lacking e) {
      return Optional.of("amends session " + amended.session() + ": " + e.getMessage());
    }
  }

  private void keep(
      long seq, long corrects, String what, String why, String who, OfSession correction) {
    if (corrected.size() < Remarks.MOST_KEPT) {
      corrected.add(
          new CorrectedEntry(seq, corrects, what, why, who, correction.wall().toString()));
    }
  }

  private Optional<ReadingTaken> readingOf(long session, long entry) throws LedgerFault {
    Optional<StoredRow> row = rows.row(entry);
    EntryBody body = row.isEmpty() ? null : imported.read(row.get());
    return body instanceof ReadingTaken reading && reading.session() == session
        ? Optional.of(reading)
        : Optional.empty();
  }
}
