package boreledger.station.session;

import boreledger.drivers.decoder.Rejected;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.PickSpec;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.EntryBody.SessionResumed;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Plan;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One sitting: it knows which position comes next, and puts into the ledger whatever the gauge
 * says. Every answer it gives stands in the ledger already.
 *
 * <p>One thread uses it, the one that writes the ledger.
 */
public final class Session {
  /** A pause since the last reading longer than this, in seconds, wants a new check first. */
  public static final double LONG_PAUSE_S = 30 * 60;

  private static final String IN_FREE_AIR = "pressed in free air";
  private static final String PUSHED_IN = "pressed with the plunger pushed in";
  private static final String GAUGED_AGAIN = "gauged again";

  /** Why a value is refused that may belong to the position before a turn. */
  static final String BEGUN_BEFORE =
      "begun before another position was turned to: lift the gauge out and gauge again";

  private final Ledger ledger;
  private final SessionStart start;
  private final SessionEntries says;
  private final Plausible plausible;
  private final long id;
  private final Waiting waiting;
  private Long setting;
  private LastTaken last;
  private double turnedTS = Double.NEGATIVE_INFINITY;

  /**
   * The reading that can be taken back, or that was just taken back.
   *
   * @param setting the setting in force before it
   */
  private record LastTaken(
      long entry, Position position, double valueMm, Long setting, boolean stands) {
    LastTaken turned() {
      return new LastTaken(entry, position, valueMm, setting, !stands);
    }
  }

  private Session(
      Ledger ledger, SessionStart start, WallClock wall, long id, Waiting waiting, Long setting) {
    this.ledger = ledger;
    this.start = start;
    this.says = new SessionEntries(id, wall, start.gauge().pick().rule());
    this.plausible = start.plausible();
    this.id = id;
    this.waiting = waiting;
    this.setting = setting;
  }

  /** Opens a new session, and keeps the files it depends on in the ledger. */
  public static Session open(Ledger ledger, SessionStart start, WallClock wall) throws LedgerFault {
    List<EntryBody> bodies = new ArrayList<>(Documents.notYetIn(ledger, start));
    bodies.add(
        new SessionOpened(
            start.job().name(),
            start.job().source().sha256(),
            start.gauge().source().sha256(),
            Documents.tables(start).stream().map(Document::sha256).toList(),
            start.measure(),
            start.ring() == null ? null : start.ring().name(),
            wall.at(0),
            start.settingTempC(),
            start.blockTempC(),
            start.line(),
            Version.PROGRAM));
    long id = ledger.append(bodies);
    return new Session(ledger, start, wall, id, Waiting.forAll(plan(start)), null);
  }

  /**
   * Goes on with an unfinished session at its next position; after a long pause with the setting
   * ring first.
   *
   * @param tS the session's clock now, in seconds since it was opened
   */
  public static Session resume(
      Ledger ledger, SessionStart start, WallClock wall, StoredSession stored, double tS)
      throws LedgerFault {
    ledger.append(
        new SessionResumed(
            stored.id(),
            tS,
            wall.at(tS),
            start.settingTempC(),
            start.blockTempC(),
            start.line(),
            Version.PROGRAM));
    Waiting waiting = Waiting.forRest(plan(start), stored);
    Long setting = null;
    // Counted from the last reading: a start without one, or a bad frame, says nothing of the zero.
    double lastReadingTS = 0;
    for (StoredSession.StoredReading reading : stored.readings()) {
      lastReadingTS = reading.reading().tS();
      if (reading.position() instanceof SettingCheck) {
        setting = reading.seq();
      }
    }
    if (setting != null && tS - lastReadingTS > LONG_PAUSE_S) {
      waiting.first(SettingCheck.RESUMING);
    }
    return new Session(ledger, start, wall, stored.id(), waiting, setting);
  }

  /** The number of the entry that opened it. */
  public long id() {
    return id;
  }

  /** What it was opened with. */
  public SessionStart start() {
    return start;
  }

  /** The position to gauge now; empty when the plan is done. */
  public Optional<Position> next() {
    return waiting.next();
  }

  /** How many positions have a reading. */
  public int done() {
    return waiting.done();
  }

  /** How many positions there are in all. */
  public int planned() {
    return waiting.planned();
  }

  /** Takes, refuses or holds what a pick rule gave. */
  public Outcome offer(PickEvent event) throws LedgerFault {
    if (event instanceof PickEvent.NotPicked notPicked) {
      return refuse(event.tS(), SessionEntries.raw(event.samples()), null, notPicked.why());
    }
    PickEvent.Picked picked = (PickEvent.Picked) event;
    Optional<Position> position = next();
    if (position.isEmpty()) {
      return refuse(
          picked.tS(), SessionEntries.raw(picked.samples()), picked.valueMm(), Waiting.PLAN_DONE);
    }
    Optional<String> impossible = plausible.refusal(picked.valueMm());
    if (impossible.isPresent()) {
      Outcome refused =
          refuse(
              picked.tS(),
              SessionEntries.raw(picked.samples()),
              picked.valueMm(),
              impossible.get());
      if (plausible.isImpossible(picked.valueMm())) {
        return refused;
      }
      return new Outcome.Held(position.get(), picked, impossible.get());
    }
    return take(position.get(), picked, picked.cautions());
  }

  /**
   * The same at a live gauge, where a key pressed far away from every bore is a gesture. In free
   * air it takes the last reading of this sitting back, and the next time restores it; with the
   * plunger pushed in it skips the present position. Where there is nothing to take back or to skip
   * to, and at the setting ring, such a value is held like any other far value.
   *
   * <p>What a gauge began before a person turned to another position, by taking back, skipping or
   * going there, is refused: it was rocked or held still where the gauge stood then. A press has no
   * such beginning.
   */
  public Outcome offerLive(PickEvent event) throws LedgerFault {
    boolean press = start.gauge().pick() instanceof PickSpec.Press;
    if (!press && event instanceof PickEvent.Picked picked && firstTS(picked) < turnedTS) {
      return refuse(
          picked.tS(), SessionEntries.raw(picked.samples()), picked.valueMm(), BEGUN_BEFORE);
    }
    if (press && event instanceof PickEvent.Picked picked) {
      double valueMm = picked.valueMm();
      if (last != null && plausible.isFreeAir(valueMm)) {
        return takeBackOrRestore(Prompt.pressed(picked, IN_FREE_AIR));
      } else if (plausible.isPushedIn(valueMm) && waiting.whyNoSkip().isEmpty()) {
        return skip(Prompt.pressed(picked, PUSHED_IN));
      }
    }
    return offer(event);
  }

  /**
   * Takes the last reading of this sitting back; if that was done already, restores it.
   *
   * @param tS the session's clock now
   * @param why who or what asked for it, in one plain clause
   */
  public Outcome takeBackOrRestore(double tS, String why) throws LedgerFault {
    return takeBackOrRestore(Prompt.said(tS, why));
  }

  /**
   * Lets the present position wait until the end of the plan, before the closing check. A position
   * that was to be gauged again keeps its reading. The setting ring cannot be skipped.
   *
   * @param tS the session's clock now
   * @param why who or what asked for it, in one plain clause
   */
  public Outcome skip(double tS, String why) throws LedgerFault {
    Optional<String> not = waiting.whyNoSkip();
    return not.isPresent() ? new Outcome.NotDone(not.get()) : skip(Prompt.said(tS, why));
  }

  /**
   * Goes to a position of the plan. What lies before it waits until the end, as if it were skipped.
   * Where a reading stands already it goes on standing until there is a new one, which takes it
   * back; skipping the position, or going to another one, leaves it alone.
   *
   * @param tS the session's clock now
   * @param why who or what asked for it, in one plain clause
   */
  public Outcome goTo(Position position, double tS, String why) throws LedgerFault {
    Optional<String> not = waiting.whyNotTo(position);
    if (not.isPresent()) {
      return new Outcome.NotDone(not.get());
    }
    boolean waits = waiting.holds(position);
    if (!next().equals(Optional.of(position))) {
      ledger.append(says.chosen(position, Prompt.said(tS, why)));
      turnedTS = tS;
      if (waits) {
        waiting.turnTo(position);
      } else {
        waiting.again(position);
      }
    }
    return new Outcome.GoingTo(position, !waits);
  }

  /** Takes a held value after all, because a person at the bench confirmed it. */
  public Outcome confirm(Outcome.Held held) throws LedgerFault {
    if (!next().equals(Optional.of(held.position()))) {
      throw new IllegalStateException("the held value's position has its reading already");
    }
    List<String> cautions = new ArrayList<>(held.picked().cautions());
    cautions.add("confirmed at the bench although " + held.why());
    return take(held.position(), held.picked(), cautions);
  }

  /** Records bytes that gave no sample. */
  public Outcome refuse(Rejected rejected) throws LedgerFault {
    return refuse(rejected.tS(), rejected.raw(), null, rejected.why());
  }

  /** Whether it writes into the ledger of a file. May be asked from any thread. */
  public boolean writesInto(Path file) {
    return ledger.isAt(file);
  }

  /** Keeps what was said meanwhile. It changes nothing about what is gauged. */
  public long keep(List<EntryBody> bodies) throws LedgerFault {
    return ledger.append(bodies);
  }

  /** Records that the line broke. */
  public void lineBroke(double tS, String why) throws LedgerFault {
    ledger.append(says.lineBroke(tS, why));
  }

  private Outcome take(Position position, PickEvent.Picked picked, List<String> cautions)
      throws LedgerFault {
    List<EntryBody> bodies = new ArrayList<>(replaced(position, picked.tS()));
    Long zero = position instanceof SettingCheck ? null : setting;
    bodies.add(says.reading(position, picked, zero, cautions));
    int after = waiting.isLast(position) ? 1 : 0;
    if (after > 0) {
      bodies.add(says.ended(picked.tS()));
    }
    long entry = ledger.append(bodies) - after;
    last = new LastTaken(entry, position, picked.valueMm(), setting, true);
    stands(entry, position);
    return new Outcome.Taken(entry, position, picked.valueMm(), cautions, next().orElse(null));
  }

  /** What takes back the reading at a position that is gauged again; often empty. */
  private List<EntryBody> replaced(Position position, double tS) throws LedgerFault {
    if (waiting.holds(position)) {
      return List.of();
    }
    Prompt again = Prompt.said(tS, GAUGED_AGAIN);
    try (LedgerView view = ledger.view()) {
      return StoredSession.some(view, session -> session == id).stream()
          .flatMap(stored -> stored.readings().stream())
          .filter(stored -> stored.position().equals(position))
          .<EntryBody>map(stored -> says.takenBack(stored.seq(), again))
          .toList();
    }
  }

  private Outcome takeBackOrRestore(Prompt prompt) throws LedgerFault {
    if (last == null) {
      return new Outcome.NotDone("there is no reading of this sitting to take back");
    }
    return last.stands() ? takeBack(prompt) : restore(prompt);
  }

  private Outcome takeBack(Prompt prompt) throws LedgerFault {
    ledger.append(says.takenBack(last.entry(), prompt));
    waiting.takenBack(last.position());
    turnedTS = prompt.tS();
    setting = last.setting();
    last = last.turned();
    return new Outcome.TakenBack(last.entry(), last.position(), last.valueMm());
  }

  private Outcome restore(Prompt prompt) throws LedgerFault {
    ledger.append(says.restored(last.entry(), prompt));
    turnedTS = prompt.tS();
    stands(last.entry(), last.position());
    last = last.turned();
    return new Outcome.Restored(last.entry(), last.position(), last.valueMm(), next().orElse(null));
  }

  private Outcome skip(Prompt prompt) throws LedgerFault {
    Position skipped = next().orElseThrow();
    Position then = waiting.afterNext().orElseThrow();
    ledger.append(says.chosen(then, prompt));
    turnedTS = prompt.tS();
    waiting.turnTo(then);
    return new Outcome.Skipped(skipped, then);
  }

  private static double firstTS(PickEvent.Picked picked) {
    return picked.samples().stream().mapToDouble(Sample::tS).min().orElse(picked.tS());
  }

  private void stands(long entry, Position position) {
    waiting.taken(position);
    if (position instanceof SettingCheck) {
      setting = entry;
    }
  }

  private Outcome refuse(double tS, Bytes raw, Double valueMm, String why) throws LedgerFault {
    ledger.append(says.refused(tS, raw, valueMm, why));
    return new Outcome.Refused(tS, next().orElse(null), why);
  }

  private static List<Position> plan(SessionStart start) {
    return Plan.of(start.job(), start.measure(), start.ring());
  }
}
