package boreledger.station.audit;

import boreledger.station.audit.Shelf.Lacking;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Filed;
import boreledger.station.ledger.EntryBody.Moved;
import boreledger.station.ledger.EntryBody.OfSession;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.Restored;
import boreledger.station.ledger.EntryBody.SessionEnded;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.EntryBody.SessionResumed;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.ledger.EntryBody.Withdrawn;
import boreledger.station.ledger.ImportedChains;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerFile;
import boreledger.station.ledger.StoredRow;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.PassCheck;
import boreledger.station.session.Version;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;

/** Checks sessions entry by entry: documents, places, corrections, and every reading's value. */
final class SessionsAudit {
  private final LedgerFile file;
  private final ImportedChains imported;
  private final Shelf shelf;
  private final Remarks remarks;
  private final Tally tally = new Tally();
  private final Map<Long, SessionWatch> sessions = new HashMap<>();
  private final TreeSet<String> programs = new TreeSet<>();
  private final List<StruckReading> struck = new ArrayList<>();

  SessionsAudit(LedgerFile file, ImportedChains imported, Shelf shelf, Remarks remarks) {
    this.file = file;
    this.imported = imported;
    this.shelf = shelf;
    this.remarks = remarks;
  }

  Tally tally() {
    return tally;
  }

  /** The versions of the program that wrote. */
  List<String> programs() {
    return List.copyOf(programs);
  }

  List<StruckReading> struck() {
    return List.copyOf(struck);
  }

  /**
   * A session begins.
   *
   * @param wall the clock that it goes by
   */
  void opened(long seq, SessionOpened opened, WallWatch wall) throws LedgerFault {
    programs.add(opened.program());
    try {
      shelf.gauge(opened);
      String jobName = shelf.job(opened).name();
      if (!jobName.equals(opened.jobName())) {
        remarks.finding(seq, "names the job " + opened.jobName() + ", its file " + jobName);
      }
      SessionWatch session = new SessionWatch(opened, new PlanWatch(shelf.plan(opened)));
      sessions.put(seq, session);
      (session.isRecorded() ? session.wall() : wall).shows(seq, opened.wall(), remarks);
    } catch (Lacking e) {
      remarks.finding(seq, "the session cannot be followed: " + e.getMessage());
    }
  }

  /**
   * Something is said in a session.
   *
   * @param wall the clock that it goes by
   */
  void said(long seq, OfSession body, WallWatch wall) throws LedgerFault {
    SessionWatch session = sessions.get(body.session());
    if (session == null) {
      remarks.finding(seq, "belongs to session " + body.session() + ", which cannot be followed");
      if (body instanceof ReadingTaken) {
        tally.computed(false);
      }
      return;
    }
    Optional<String> wrong = Optional.empty();
    boolean correction = false;
    if (body instanceof ReadingTaken reading) {
      reading(seq, reading, session);
    } else if (body instanceof SessionResumed resumed) {
      session.resumed(resumed.program());
      programs.add(session.program());
    } else if (body instanceof SessionEnded && !session.plan().isDone()) {
      wrong = Optional.of("ends session " + body.session() + " before its plan is done");
    } else if (body instanceof TakenBack back) {
      correction = true;
      wrong = takenBack(seq, back, session);
    } else if (body instanceof Restored restored) {
      correction = true;
      wrong = session.restore(restored.entry());
      struck.removeIf(each -> each.entry() == restored.entry());
    } else if (body instanceof Moved moved) {
      correction = true;
      wrong = moved(moved, session);
    } else if (body instanceof Filed pass) {
      correction = true;
      wrong = filed(seq, pass, session);
    } else if (body instanceof Withdrawn withdrawn) {
      correction = true;
      wrong = session.withdraw(withdrawn.entry());
    }
    wrong.ifPresent(what -> remarks.finding(seq, what));
    boolean ownClock = session.isRecorded() && !correction;
    (ownClock ? session.wall() : wall).shows(seq, body.wall(), remarks);
  }

  private void reading(long seq, ReadingTaken reading, SessionWatch session) throws LedgerFault {
    Long setting = session.setting();
    session.read(seq, reading.position()).ifPresent(wrong -> remarks.finding(seq, wrong));
    boolean check = reading.position() instanceof SettingCheck;
    if (!Objects.equals(reading.setting(), check ? null : setting)) {
      remarks.finding(
          seq,
          "refers to entry "
              + reading.setting()
              + " as the setting in force, where "
              + setting
              + " is");
    }
    List<String> differences;
    try {
      differences = new ReadingAgain(shelf.gauge(session.opened())).differences(reading);
    } catch (Lacking e) {
      differences = List.of(e.getMessage());
    }
    tally.computed(differences.isEmpty());
    for (String difference : differences) {
      remarks.finding(seq, difference + by(session.program()));
    }
  }

  /** Names both versions where they are not the same: its rules may have been other ones. */
  private static String by(String program) {
    return program.equals(Version.PROGRAM)
        ? ""
        : " (taken by program " + program + ", checked by " + Version.PROGRAM + ")";
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

  private Optional<String> moved(Moved moved, SessionWatch session) throws LedgerFault {
    Optional<ReadingTaken> reading = readingOf(moved.session(), moved.entry());
    return reading.isEmpty()
        ? Optional.of("moves entry " + moved.entry() + ", no reading of its session")
        : session.move(moved.entry(), reading.get().position(), moved.position());
  }

  private Optional<String> filed(long seq, Filed pass, SessionWatch session) throws LedgerFault {
    session.filed(seq);
    try {
      return PassCheck.fault(pass, shelf.job(session.opened()));
    } catch (Lacking e) {
      return Optional.of(e.getMessage());
    }
  }

  private Optional<ReadingTaken> readingOf(long session, long entry) throws LedgerFault {
    Optional<StoredRow> row = file.row(entry);
    EntryBody body = row.isEmpty() ? null : imported.read(row.get());
    return body instanceof ReadingTaken reading && reading.session() == session
        ? Optional.of(reading)
        : Optional.empty();
  }
}
