package boreledger.station.session;

import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Amended;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.EntryBody.ImportedEntry;
import boreledger.station.ledger.EntryBody.Moved;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.Restored;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.StoredSession.Amendment;
import boreledger.station.session.StoredSession.StoredReading;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Corrects what stands in a ledger, outside a sitting: as new entries that say who and why. What
 * was there stays.
 */
public final class Correction {
  private final Views views;
  private final Keeping keeping;
  private final String why;
  private final String who;
  private final Clock clock;

  /** Shows the ledger as it stands. */
  @FunctionalInterface
  public interface Views {
    /** A view, which its user closes. */
    LedgerView open() throws LedgerFault;
  }

  /** Puts entries into the ledger. */
  @FunctionalInterface
  public interface Keeping {
    /**
     * Adds entries, all or none.
     *
     * @return the number of the last one
     * @throws NotPossible if they cannot be written just now
     */
    long append(List<EntryBody> bodies) throws LedgerFault, NotPossible;
  }

  /**
   * A correction in a ledger that is open for it.
   *
   * @param why in one plain clause
   * @param who the person
   */
  public Correction(Ledger ledger, String why, String who, Clock clock) {
    this(ledger::view, ledger::append, why, who, clock);
  }

  /**
   * A correction.
   *
   * @param why in one plain clause
   * @param who the person
   */
  public Correction(Views views, Keeping keeping, String why, String who, Clock clock) {
    this.views = views;
    this.keeping = keeping;
    this.why = why.strip();
    this.who = who.strip();
    this.clock = clock;
  }

  /** What was asked for cannot be done; the message says why. */
  public static final class NotPossible extends Exception {
    private static final long serialVersionUID = 1L;

    /** With what is in the way, in one plain clause. */
    public NotPossible(String why) {
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
    StoredSession stored = session(entry);
    StoredReading reading = standing(stored, entry);
    EntryBody body = new TakenBack(stored.id(), entry, null, clock.instant(), why, who, null, null);
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
   * Says that a reading was taken somewhere else, where none stands.
   *
   * @param plan the positions of its session
   */
  public Done move(long entry, Position to, List<Position> plan) throws LedgerFault, NotPossible {
    StoredSession stored = session(entry);
    StoredReading reading = standing(stored, entry);
    boolean ofSetting = to instanceof SettingCheck || reading.position() instanceof SettingCheck;
    if (ofSetting || !plan.contains(to)) {
      throw new NotPossible("entry " + entry + " cannot be moved to " + to.words());
    }
    Optional<StoredReading> there = stored.at(to);
    if (there.isPresent()) {
      throw new NotPossible(
          there.get().seq() == entry
              ? "entry " + entry + " stands at " + to.words() + " already"
              : to.words() + " has a reading, entry " + there.get().seq() + "; take it back first");
    }
    EntryBody body = new Moved(stored.id(), entry, to, null, clock.instant(), why, who);
    return done(
        "moved", append(body), new StoredReading(entry, reading.reading().movedTo(to, why)));
  }

  /**
   * Corrects what a session was opened with.
   *
   * @return what was written
   */
  public Amendment amend(long session, Change change) throws LedgerFault, NotPossible {
    StoredSession stored = stored(session);
    change.refuseUnlessItCanBe(stored);
    List<EntryBody> bodies = new ArrayList<>();
    if (change.job() != null && !isKept(change.job())) {
      bodies.add(change.job());
    }
    Amended amended =
        new Amended(
            session,
            change.fromTS(),
            clock.instant(),
            change.settingTempC(),
            change.blockTempC(),
            change.job() == null ? null : change.job().sha256(),
            why,
            who);
    bodies.add(amended);
    long seq = append(bodies);
    return new Amendment(seq, amended, stored.stintAt(change.fromTS()), stored.job());
  }

  /** The session of a reading that can be corrected here. */
  public StoredSession session(long entry) throws LedgerFault, NotPossible {
    EntryBody body;
    try (LedgerView view = views.open()) {
      body = view.entry(entry).map(Entry::body).orElse(null);
    }
    if (body instanceof ImportedEntry imported) {
      throw foreign(entry, imported);
    } else if (body instanceof ReadingTaken reading) {
      return stored(reading.session());
    }
    throw new NotPossible("entry " + entry + " is no reading");
  }

  /** A session that can be corrected here. */
  public StoredSession stored(long session) throws LedgerFault, NotPossible {
    try (LedgerView view = views.open()) {
      EntryBody body = view.entry(session).map(Entry::body).orElse(null);
      if (body instanceof ImportedEntry imported) {
        throw foreign(session, imported);
      } else if (!(body instanceof SessionOpened)) {
        throw new NotPossible("entry " + session + " is no session");
      }
      return StoredSession.some(view, id -> id == session).get(0);
    }
  }

  /** Its own ledger may correct it too, and both would then have to agree. */
  private NotPossible foreign(long entry, ImportedEntry imported) throws LedgerFault {
    try (LedgerView view = views.open()) {
      return new NotPossible(
          "entry "
              + entry
              + " is entry "
              + imported.number()
              + " of ledger "
              + view.importedLedger(imported)
              + "; correct it there and import that ledger's new export");
    }
  }

  private boolean isKept(Document job) throws LedgerFault {
    try (LedgerView view = views.open()) {
      return view.document(job.sha256()).isPresent();
    }
  }

  private long append(EntryBody body) throws LedgerFault, NotPossible {
    return append(List.of(body));
  }

  private long append(List<EntryBody> bodies) throws LedgerFault, NotPossible {
    if (why.isEmpty() || who.isEmpty()) {
      throw new NotPossible("a correction needs a reason and a name");
    }
    return keeping.append(bodies);
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
