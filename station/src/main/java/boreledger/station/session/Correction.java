package boreledger.station.session;

import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Amended;
import boreledger.station.ledger.EntryBody.Moved;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.Restored;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.StoredSession.StoredReading;
import java.time.Clock;
import java.util.List;
import java.util.Locale;

/**
 * Corrects what stands in a ledger, outside a sitting: as new entries that say who and why. What
 * was there stays.
 */
public final class Correction {
  private final Ledger ledger;
  private final String why;
  private final String who;
  private final Clock clock;

  /**
   * A correction.
   *
   * @param why in one plain clause
   * @param who the person
   */
  public Correction(Ledger ledger, String why, String who, Clock clock) {
    this.ledger = ledger;
    this.why = why.strip();
    this.who = who.strip();
    this.clock = clock;
  }

  /** What was asked for cannot be done; the message says why. */
  public static final class NotPossible extends Exception {
    private static final long serialVersionUID = 1L;

    NotPossible(String why) {
      super(why);
    }
  }

  /**
   * What was done.
   *
   * @param entry the correction's entry
   * @param reading the reading's entry
   * @param position where the reading stands, or stood
   */
  public record Done(String done, long entry, long reading, String position, double valueMm) {
    /** The same in words. */
    public String words() {
      return String.format(
          Locale.ROOT,
          "%s, as entry %d: entry %d, %s, %+.4f mm.",
          done.equals("taken-back") ? "Taken back" : done.equals("moved") ? "Moved" : "Restored",
          entry,
          reading,
          position,
          valueMm);
    }
  }

  /** Takes a reading back. */
  public Done takeBack(long entry) throws LedgerFault, NotPossible {
    StoredReading reading = standing(session(entry), entry);
    long session = reading.reading().session();
    EntryBody body = new TakenBack(session, entry, null, clock.instant(), why, who, null, null);
    return done("taken-back", append(body), reading);
  }

  /** Lets a reading that was taken back count again. */
  public Done restore(long entry) throws LedgerFault, NotPossible {
    StoredSession stored = session(entry);
    StoredReading reading =
        stored.takenBack().stream()
            .map(StoredSession.TakenBackReading::reading)
            .filter(each -> each.seq() == entry)
            .findFirst()
            .orElseThrow(() -> new NotPossible("entry " + entry + " was not taken back"));
    EntryBody body = new Restored(stored.id(), entry, null, clock.instant(), why, who, null, null);
    return done("restored", append(body), reading);
  }

  /**
   * Says that a reading was taken somewhere else.
   *
   * @param plan the positions of its session
   */
  public Done move(long entry, Position to, List<Position> plan) throws LedgerFault, NotPossible {
    StoredReading reading = standing(session(entry), entry);
    boolean ofSetting = to instanceof SettingCheck || reading.position() instanceof SettingCheck;
    if (ofSetting || !plan.contains(to)) {
      throw new NotPossible("entry " + entry + " cannot be moved to " + to.words());
    }
    long session = reading.reading().session();
    EntryBody body = new Moved(session, entry, to, null, clock.instant(), why, who);
    return done(
        "moved", append(body), new StoredReading(entry, reading.reading().movedTo(to, why)));
  }

  /**
   * Says that a session's temperatures were others, from a moment of its clock on.
   *
   * @param settingTempC null when it stays
   * @param blockTempC null when it stays
   * @return the entry's number
   */
  public long amend(long session, double fromTS, Double settingTempC, Double blockTempC)
      throws LedgerFault, NotPossible {
    if (settingTempC == null && blockTempC == null) {
      throw new NotPossible("nothing to amend: name a temperature");
    }
    stored(session);
    return append(
        new Amended(session, fromTS, clock.instant(), settingTempC, blockTempC, why, who));
  }

  private long append(EntryBody body) throws LedgerFault, NotPossible {
    if (why.isEmpty() || who.isEmpty()) {
      throw new NotPossible("a correction needs a reason and a name");
    }
    return ledger.append(body);
  }

  private StoredSession session(long entry) throws LedgerFault, NotPossible {
    try (LedgerView view = ledger.view()) {
      EntryBody body = view.entry(entry).map(Entry::body).orElse(null);
      if (body instanceof ReadingTaken reading) {
        return stored(reading.session());
      }
    }
    throw new NotPossible("entry " + entry + " is no reading");
  }

  private StoredSession stored(long session) throws LedgerFault, NotPossible {
    try (LedgerView view = ledger.view()) {
      return StoredSession.some(view, id -> id == session).stream()
          .findFirst()
          .orElseThrow(() -> new NotPossible("entry " + session + " is no session"));
    }
  }

  private static StoredReading standing(StoredSession stored, long entry) throws NotPossible {
    return stored.readings().stream()
        .filter(each -> each.seq() == entry)
        .findFirst()
        .orElseThrow(() -> new NotPossible("entry " + entry + " was taken back already"));
  }

  private static Done done(String done, long entry, StoredReading reading) {
    return new Done(
        done, entry, reading.seq(), reading.position().words(), reading.reading().valueMm());
  }
}
