package boreledger.station.session;

import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.LineBroke;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.SampleRefused;
import boreledger.station.ledger.EntryBody.SessionEnded;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.EntryBody.SessionResumed;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.ledger.LedgerView;
import boreledger.station.plan.Position;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A session as the ledger tells it.
 *
 * @param id the number of the entry that opened it
 * @param readings in the order they were taken
 * @param ended whether its plan was done
 * @param lastTS the session clock at its last entry, in seconds
 * @param lastWall the clock on the wall then
 * @param stints the temperatures from a moment on, earliest first, never empty
 */
public record StoredSession(
    long id,
    SessionOpened opened,
    List<StoredReading> readings,
    List<SampleRefused> refused,
    boolean ended,
    double lastTS,
    Instant lastWall,
    List<Stint> stints) {
  /** Takes copies of the lists. */
  public StoredSession {
    readings = List.copyOf(readings);
    refused = List.copyOf(refused);
    stints = List.copyOf(stints);
  }

  /**
   * The temperatures of a stretch of the session, from its opening or a resumption on.
   *
   * @param fromTS when it begins, in seconds on the session's clock
   * @param settingTempC the setting ring's, in degrees Celsius; null when not taken
   * @param blockTempC the block's, in degrees Celsius; null when not taken
   */
  public record Stint(double fromTS, Double settingTempC, Double blockTempC) {}

  /** The temperatures in force at a moment of the session's clock. */
  public Stint stintAt(double tS) {
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
    List<StoredSession> sessions = new ArrayList<>();
    for (Entry opening : view.sessions()) {
      sessions.add(of(opening, view.ofSession(opening.seq())));
    }
    return List.copyOf(sessions);
  }

  /** The readings in force: at each position the last one taken there. */
  public List<StoredReading> inForce() {
    return readings.stream().filter(each -> at(each.position()).equals(Optional.of(each))).toList();
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
    SessionOpened opened = (SessionOpened) opening.body();
    Folding folding = new Folding(opened);
    entries.forEach(folding::add);
    return new StoredSession(
        opening.seq(),
        opened,
        folding.readings,
        folding.refused,
        folding.ended,
        folding.lastTS,
        folding.lastWall,
        folding.stints);
  }

  /** A session's entries, put together one after the other. */
  private static final class Folding {
    private final List<StoredReading> readings = new ArrayList<>();
    private final List<SampleRefused> refused = new ArrayList<>();
    private final List<Stint> stints = new ArrayList<>();
    private boolean ended;
    private double lastTS;
    private Instant lastWall;

    Folding(SessionOpened opened) {
      lastWall = opened.wall();
      stints.add(new Stint(0, opened.settingTempC(), opened.blockTempC()));
    }

    void add(Entry entry) {
      EntryBody body = entry.body();
      if (body instanceof ReadingTaken reading) {
        readings.add(new StoredReading(entry.seq(), reading));
        now(reading.tS(), reading.wall());
      } else if (body instanceof SampleRefused sample) {
        refused.add(sample);
        now(sample.tS(), sample.wall());
      } else if (body instanceof SessionResumed resumed) {
        stints.add(resumed(resumed));
        now(resumed.tS(), resumed.wall());
      } else if (body instanceof LineBroke fault) {
        now(fault.tS(), fault.wall());
      } else if (body instanceof SessionEnded end) {
        ended = true;
        now(end.tS(), end.wall());
      }
    }

    private Stint resumed(SessionResumed resumed) {
      Stint before = stints.get(stints.size() - 1);
      return new Stint(
          resumed.tS(),
          resumed.settingTempC() == null ? before.settingTempC() : resumed.settingTempC(),
          resumed.blockTempC() == null ? before.blockTempC() : resumed.blockTempC());
    }

    private void now(double tS, Instant wall) {
      if (tS >= lastTS) {
        lastTS = tS;
        lastWall = wall;
      }
    }
  }
}
