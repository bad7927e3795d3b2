package boreledger.station.session;

import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody.Amended;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SampleRefused;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.LongPredicate;

/**
 * A session as the ledger tells it.
 *
 * @param id the number of the entry that opened it
 * @param readings those that stand, in the order they were taken, each where it was last moved to
 * @param ended whether its plan is done
 * @param lastTS the session clock at its last entry, in seconds
 * @param lastWall the clock on the wall then
 * @param stints the temperatures from a moment on, earliest first, never empty; as amended
 * @param takenBack readings that no longer stand, in the order they were taken
 * @param reopened whether its plan had been done once and is not any more
 * @param amendments what was corrected of what it was opened with, in the order it was said
 */
public record StoredSession(
    long id,
    SessionOpened opened,
    List<StoredReading> readings,
    List<SampleRefused> refused,
    boolean ended,
    double lastTS,
    Instant lastWall,
    List<Stint> stints,
    List<TakenBackReading> takenBack,
    boolean reopened,
    List<Amendment> amendments) {
  /** Takes copies of the lists. */
  public StoredSession {
    readings = List.copyOf(readings);
    refused = List.copyOf(refused);
    stints = List.copyOf(stints);
    takenBack = List.copyOf(takenBack);
    amendments = List.copyOf(amendments);
  }

  /** The content hash of the job that holds: the one it was last amended to. */
  public String job() {
    return amendments.stream()
        .map(each -> each.amended().job())
        .filter(Objects::nonNull)
        .reduce(opened.job(), (earlier, later) -> later);
  }

  /**
   * A correction of what the session was opened with.
   *
   * @param seq the number of its entry
   * @param before the temperatures that held until then at its moment
   * @param jobBefore the content hash of the job that held until then
   */
  public record Amendment(long seq, Amended amended, Stint before, String jobBefore) {}

  /** A reading that does not count, and what took it back. */
  public record TakenBackReading(StoredReading reading, TakenBack by) {}

  /**
   * The temperatures of a stretch of the session, from its opening, a resumption or the moment of
   * an amendment on.
   *
   * @param fromTS when it begins, in seconds on the session's clock
   * @param settingTempC the setting ring's, in degrees Celsius; null when not taken
   * @param blockTempC the block's, in degrees Celsius; null when not taken
   */
  public record Stint(double fromTS, Double settingTempC, Double blockTempC) {
    /** The next stretch; null for a temperature that stays. */
    Stint from(double tS, Double newSettingTempC, Double newBlockTempC) {
      return new Stint(
          tS,
          newSettingTempC == null ? settingTempC : newSettingTempC,
          newBlockTempC == null ? blockTempC : newBlockTempC);
    }
  }

  /** The temperatures in force at a moment of the session's clock. */
  public Stint stintAt(double tS) {
    return stintAt(stints, tS);
  }

  static Stint stintAt(List<Stint> stints, double tS) {
    return stints.stream()
        .filter(stint -> stint.fromTS() <= tS)
        .reduce((earlier, later) -> later)
        .orElse(stints.get(0));
  }

  /**
   * A reading with the number of its entry.
   *
   * @param seq the entry's number
   */
  public record StoredReading(long seq, ReadingTaken reading) {
    /** Where it was taken. */
    public Position position() {
      return reading.position();
    }
  }

  /** Every session in a ledger, oldest first. */
  public static List<StoredSession> all(LedgerView view) throws LedgerFault {
    return some(view, id -> true);
  }

  /** The sessions of a ledger that are wanted by their numbers, oldest first. */
  public static List<StoredSession> some(LedgerView view, LongPredicate wanted) throws LedgerFault {
    List<StoredSession> sessions = new ArrayList<>();
    for (Entry opening : view.sessions()) {
      if (wanted.test(opening.seq())) {
        sessions.add(of(opening, view.ofSession(opening.seq())));
      }
    }
    return List.copyOf(sessions);
  }

  /** One session, the samples of its readings left out: all that results are computed from. */
  public static StoredSession withoutSamples(LedgerView view, Entry opening) throws LedgerFault {
    StoredSessionFolding folding = new StoredSessionFolding((SessionOpened) opening.body());
    view.eachOfSession(opening.seq(), entry -> folding.add(light(entry)));
    return folding.session(opening.seq());
  }

  private static Entry light(Entry entry) {
    return entry.body() instanceof ReadingTaken reading
        ? new Entry(entry.seq(), reading.withoutSamples(), entry.hash())
        : entry;
  }

  /** The readings in force: at each position the last one taken there. */
  public List<StoredReading> inForce() {
    Map<Position, StoredReading> last = new HashMap<>();
    readings.forEach(each -> last.put(each.position(), each));
    return readings.stream().filter(each -> last.get(each.position()).seq() == each.seq()).toList();
  }

  /** The reading in force at a position: the last one taken there. */
  public Optional<StoredReading> at(Position position) {
    return readings.stream()
        .filter(stored -> stored.position().equals(position))
        .reduce((earlier, later) -> later);
  }

  /**
   * A session by its entries.
   *
   * @param entries what was said after its opening, oldest first
   */
  public static StoredSession of(Entry opening, List<Entry> entries) {
    StoredSessionFolding folding = new StoredSessionFolding((SessionOpened) opening.body());
    entries.forEach(folding::add);
    return folding.session(opening.seq());
  }
}
