package boreledger.station.session;

import boreledger.drivers.decoder.Rejected;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.PickSpec;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Document;
import boreledger.station.ledger.EntryBody.KeptSample;
import boreledger.station.ledger.EntryBody.OfFiling;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.Restored;
import boreledger.station.ledger.EntryBody.SampleRefused;
import boreledger.station.ledger.EntryBody.SessionEnded;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.EntryBody.SessionResumed;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.ledger.Ledger;
import boreledger.station.ledger.LedgerFault;
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

  private static final String GESTURE = "pressed in free air";

  private final Ledger ledger;
  private final SessionStart start;
  private final WallClock wall;
  private final Plausible plausible;
  private final long id;
  private final Waiting waiting;
  private Long setting;
  private LastTaken last;

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
    this.wall = wall;
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
      return refuse(event.tS(), raw(event.samples()), null, notPicked.why());
    }
    PickEvent.Picked picked = (PickEvent.Picked) event;
    Optional<Position> position = next();
    if (position.isEmpty()) {
      String why = "every position of the plan has its reading";
      return refuse(picked.tS(), raw(picked.samples()), picked.valueMm(), why);
    }
    Optional<String> impossible = plausible.refusal(picked.valueMm());
    if (impossible.isPresent()) {
      Outcome refused =
          refuse(picked.tS(), raw(picked.samples()), picked.valueMm(), impossible.get());
      if (plausible.isImpossible(picked.valueMm())) {
        return refused;
      }
      return new Outcome.Held(position.get(), picked, impossible.get());
    }
    return take(position.get(), picked, picked.cautions());
  }

  /**
   * The same at a live gauge, where a key pressed in free air is a gesture: it takes the last
   * reading of this sitting back, and the next time restores it. Without such a reading the value
   * is held like any other far value.
   */
  public Outcome offerLive(PickEvent event) throws LedgerFault {
    boolean gesture =
        last != null
            && start.gauge().pick() instanceof PickSpec.Press
            && event instanceof PickEvent.Picked picked
            && plausible.isFreeAir(picked.valueMm());
    if (!gesture) {
      return offer(event);
    }
    PickEvent.Picked picked = (PickEvent.Picked) event;
    return last.stands() ? takeBack(picked) : restore(picked);
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

  /** Keeps what was filed meanwhile. It changes nothing about what is gauged. */
  public long keep(OfFiling body) throws LedgerFault {
    return ledger.append(body);
  }

  /** Records that the line broke. */
  public void lineBroke(double tS, String why) throws LedgerFault {
    ledger.append(new EntryBody.LineBroke(id, tS, wall.at(tS), why));
  }

  private Outcome take(Position position, PickEvent.Picked picked, List<String> cautions)
      throws LedgerFault {
    List<EntryBody> bodies = new ArrayList<>();
    bodies.add(reading(position, picked, cautions));
    if (waiting.isLast(position)) {
      bodies.add(new SessionEnded(id, picked.tS(), wall.at(picked.tS())));
    }
    long entry = ledger.append(bodies) - bodies.size() + 1;
    last = new LastTaken(entry, position, picked.valueMm(), setting, true);
    stands(entry, position);
    return new Outcome.Taken(entry, position, picked.valueMm(), cautions, next().orElse(null));
  }

  private Outcome takeBack(PickEvent.Picked gesture) throws LedgerFault {
    ledger.append(
        new TakenBack(
            id,
            last.entry(),
            gesture.tS(),
            wall.at(gesture.tS()),
            GESTURE,
            null,
            raw(gesture.samples()).toHex(),
            gesture.valueMm()));
    waiting.takenBack(last.position());
    setting = last.setting();
    last = last.turned();
    return new Outcome.TakenBack(last.entry(), last.position(), last.valueMm());
  }

  private Outcome restore(PickEvent.Picked gesture) throws LedgerFault {
    ledger.append(
        new Restored(
            id,
            last.entry(),
            gesture.tS(),
            wall.at(gesture.tS()),
            GESTURE,
            null,
            raw(gesture.samples()).toHex(),
            gesture.valueMm()));
    stands(last.entry(), last.position());
    last = last.turned();
    return new Outcome.Restored(last.entry(), last.position(), last.valueMm(), next().orElse(null));
  }

  private void stands(long entry, Position position) {
    waiting.taken(position);
    if (position instanceof SettingCheck) {
      setting = entry;
    }
  }

  private ReadingTaken reading(Position position, PickEvent.Picked picked, List<String> cautions) {
    return new ReadingTaken(
        id,
        position,
        picked.tS(),
        wall.at(picked.tS()),
        picked.valueMm(),
        picked.standardUncertaintyMm(),
        start.gauge().pick().rule(),
        position instanceof SettingCheck ? null : setting,
        picked.samples().stream()
            .map(sample -> new KeptSample(sample.tS(), sample.raw().toHex(), sample.valueMm()))
            .toList(),
        cautions);
  }

  private Outcome refuse(double tS, Bytes raw, Double valueMm, String why) throws LedgerFault {
    ledger.append(new SampleRefused(id, tS, wall.at(tS), raw.toHex(), valueMm, why));
    return new Outcome.Refused(tS, next().orElse(null), why);
  }

  private static Bytes raw(List<Sample> samples) {
    return samples.stream().map(Sample::raw).reduce(Bytes.EMPTY, Bytes::plus);
  }

  private static List<Position> plan(SessionStart start) {
    return Plan.of(start.job(), start.measure(), start.ring());
  }
}
