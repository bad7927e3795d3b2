package boreledger.station.session;

import boreledger.station.ledger.Entry;
import boreledger.station.ledger.EntryBody;
import boreledger.station.ledger.EntryBody.Amended;
import boreledger.station.ledger.EntryBody.Filed;
import boreledger.station.ledger.EntryBody.LineBroke;
import boreledger.station.ledger.EntryBody.Moved;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.ledger.EntryBody.Restored;
import boreledger.station.ledger.EntryBody.SampleRefused;
import boreledger.station.ledger.EntryBody.SessionEnded;
import boreledger.station.ledger.EntryBody.SessionOpened;
import boreledger.station.ledger.EntryBody.SessionResumed;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.ledger.EntryBody.Withdrawn;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.StoredSession.FiledPass;
import boreledger.station.session.StoredSession.Stint;
import boreledger.station.session.StoredSession.StoredReading;
import boreledger.station.session.StoredSession.TakenBackReading;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
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
  private final List<Stint> stints = new ArrayList<>();
  private final TreeMap<Long, FiledPass> filed = new TreeMap<>();
  private boolean endedOnce;
  private boolean gaugedSinceEnd;
  private double lastTS;
  private Instant lastWall;

  StoredSessionFolding(SessionOpened opened) {
    this.opened = opened;
    lastWall = opened.wall();
    stints.add(new Stint(0, opened.settingTempC(), opened.blockTempC()));
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
        stints,
        List.copyOf(takenBack.values()),
        endedOnce && !ended,
        List.copyOf(filed.values()));
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
      Stint before = stints.get(stints.size() - 1);
      stints.add(before.from(resumed.tS(), resumed.settingTempC(), resumed.blockTempC()));
      now(resumed.tS(), resumed.wall());
    } else if (body instanceof LineBroke fault) {
      now(fault.tS(), fault.wall());
    } else if (body instanceof SessionEnded end) {
      endedOnce = true;
      gaugedSinceEnd = false;
      now(end.tS(), end.wall());
    } else if (body instanceof Filed pass && isReadable(pass)) {
      filed.put(entry.seq(), new FiledPass(entry.seq(), pass));
    } else if (body instanceof Withdrawn withdrawn) {
      filed.remove(withdrawn.entry());
    } else {
      correct(body);
    }
  }

  /** A pass that cannot be one is left out here, as a correction that does not fit is. */
  private static boolean isReadable(Filed pass) {
    return pass.turns() > 0
        && PassCheck.gapMm(pass.beforeMm()).isPresent()
        && PassCheck.gapMm(pass.afterMm()).isPresent();
  }

  /** A correction that does not fit is left out here; whoever audits the ledger hears of it. */
  private void correct(EntryBody body) {
    if (body instanceof TakenBack back && readings.containsKey(back.entry())) {
      takenBack.put(back.entry(), new TakenBackReading(readings.remove(back.entry()), back));
    } else if (body instanceof Restored again && takenBack.containsKey(again.entry())) {
      readings.put(again.entry(), takenBack.remove(again.entry()).reading());
    } else if (body instanceof Moved moved && readings.containsKey(moved.entry())) {
      move(moved);
    } else if (body instanceof Amended amended) {
      Stint before = stintAt(amended.tS());
      stints.add(before.from(amended.tS(), amended.settingTempC(), amended.blockTempC()));
      stints.sort(Comparator.comparingDouble(Stint::fromTS));
    }
  }

  private void move(Moved moved) {
    ReadingTaken reading = readings.get(moved.entry()).reading();
    String caution =
        "moved here from "
            + reading.position().words()
            + " because "
            + by(moved.why(), moved.who());
    everRead.add(moved.position());
    readings.put(
        moved.entry(),
        new StoredReading(moved.entry(), reading.movedTo(moved.position(), caution)));
  }

  private static String by(String why, String who) {
    return who == null ? why : why + " (" + who + ")";
  }

  private Stint stintAt(double tS) {
    return stints.stream()
        .filter(stint -> stint.fromTS() <= tS)
        .reduce((earlier, later) -> later)
        .orElse(stints.get(0));
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
