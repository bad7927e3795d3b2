package boreledger.station.session;

import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Amended;
import boreledger.station.ledger.EntryBody.Chosen;
import boreledger.station.ledger.EntryBody.LineBroke;
import boreledger.station.ledger.EntryBody.Moved;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.Restored;
import boreledger.station.ledger.EntryBody.SampleRefused;
import boreledger.station.ledger.EntryBody.SessionEnded;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.EntryBody.SessionResumed;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.StoredSession.Amendment;
import boreledger.station.session.StoredSession.StoredReading;
import boreledger.station.session.StoredSession.TakenBackReading;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;

/** A session's entries, put together one after the other. */
final class StoredSessionFolding {
  private final SessionOpened opened;
  private final TreeMap<Long, StoredReading> readings = new TreeMap<>();
  private final TreeMap<Long, TakenBackReading> takenBack = new TreeMap<>();
  private final Set<Position> everRead = new HashSet<>();
  private final List<SampleRefused> refused = new ArrayList<>();
  private final Stints stints;
  private final List<Amendment> amendments = new ArrayList<>();
  private String job;
  private boolean endedOnce;
  private boolean gaugedSinceEnd;
  private double lastTS;
  private Instant lastWall;

  StoredSessionFolding(SessionOpened opened) {
    this.opened = opened;
    lastWall = opened.wall();
    job = opened.job();
    stints = new Stints(opened);
  }

  StoredSession session(long id) {
    boolean ended = endedOnce && !gaugedSinceEnd && !hasHoles();
    return new StoredSession(
        id,
        opened,
        List.copyOf(readings.values()),
        refused,
        ended,
        lastTS,
        lastWall,
        stints.list(),
        List.copyOf(takenBack.values()),
        endedOnce && !ended,
        amendments);
  }

  void add(Entry entry) {
    EntryBody body = entry.body();
    if (body instanceof ReadingTaken reading) {
      readings.put(entry.seq(), new StoredReading(entry.seq(), reading));
      everRead.add(reading.position());
      gaugedSinceEnd = endedOnce;
      now(reading.tS(), reading.wall());
    } else if (body instanceof SampleRefused sample) {
      refused.add(sample);
      now(sample.tS(), sample.wall());
    } else if (body instanceof SessionResumed resumed) {
      stints.from(resumed.tS(), resumed.settingTempC(), resumed.blockTempC());
      now(resumed.tS(), resumed.wall());
    } else if (body instanceof LineBroke fault) {
      now(fault.tS(), fault.wall());
    } else if (body instanceof Chosen choice) {
      now(choice.tS(), choice.wall());
    } else if (body instanceof SessionEnded end) {
      endedOnce = true;
      gaugedSinceEnd = false;
      now(end.tS(), end.wall());
    } else {
      correct(entry.seq(), body);
    }
  }

  /** A correction that does not fit is left out here; whoever audits the ledger hears of it. */
  private void correct(long seq, EntryBody body) {
    if (body instanceof TakenBack back && readings.containsKey(back.entry())) {
      takenBack.put(back.entry(), new TakenBackReading(readings.remove(back.entry()), back));
    } else if (body instanceof Restored again && takenBack.containsKey(again.entry())) {
      readings.put(again.entry(), takenBack.remove(again.entry()).reading());
    } else if (body instanceof Moved moved && readings.containsKey(moved.entry())) {
      move(seq, moved);
    } else if (body instanceof Amended amended) {
      amendments.add(new Amendment(seq, amended, stints.at(amended.tS()), job));
      stints.from(amended.tS(), amended.settingTempC(), amended.blockTempC());
      job = amended.job() == null ? job : amended.job();
    }
  }

  private void move(long seq, Moved moved) {
    ReadingTaken reading = readings.get(moved.entry()).reading();
    String caution =
        "moved here from "
            + reading.position().words()
            + " by entry "
            + seq
            + ": "
            + new Said(moved.why(), moved.who(), moved.wall()).words();
    everRead.add(moved.position());
    readings.put(
        moved.entry(),
        new StoredReading(moved.entry(), reading.movedTo(moved.position(), caution)));
  }

  /** Whether a position that had a reading once has none now. */
  private boolean hasHoles() {
    Set<Position> holes = new HashSet<>(everRead);
    holes.remove(SettingCheck.RESUMING);
    readings.values().forEach(reading -> holes.remove(reading.position()));
    return !holes.isEmpty();
  }

  private void now(double tS, Instant wall) {
    if (tS >= lastTS) {
      lastTS = tS;
      lastWall = wall;
    }
  }
}
