package boreledger.station.keeping;

import boreledger.station.keeping.CsvRow.Standing;
import boreledger.station.ledger.EntryBody.TakenBack;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.StoredSession;
import boreledger.station.session.StoredSession.StoredReading;
import boreledger.station.session.StoredSession.TakenBackReading;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Which readings of a session count, and why the others do not. */
final class Standings {
  private final TreeMap<Long, StoredReading> readings = new TreeMap<>();
  private final Map<Long, TakenBack> struck = new HashMap<>();
  private final Map<Position, Long> last = new HashMap<>();

  Standings(StoredSession session) {
    for (TakenBackReading back : session.takenBack()) {
      readings.put(back.reading().seq(), back.reading());
      struck.put(back.reading().seq(), back.by());
    }
    for (StoredReading standing : session.readings()) {
      readings.put(standing.seq(), standing);
      last.put(standing.position(), standing.seq());
    }
  }

  /** All readings in the order they were taken. */
  List<StoredReading> readings() {
    return List.copyOf(readings.values());
  }

  /** Whether one of them counts: every setting check, and at each position the last one there. */
  Standing of(StoredReading reading) {
    TakenBack back = struck.get(reading.seq());
    if (back != null) {
      return new Standing(
          "struck", back.who() == null ? back.why() : back.why() + ", " + back.who());
    }
    if (reading.position() instanceof SettingCheck) {
      return Standing.IN_FORCE;
    }
    long inForce = last.get(reading.position());
    return inForce == reading.seq()
        ? Standing.IN_FORCE
        : new Standing("replaced", "entry " + inForce + " was taken later at the same place");
  }
}
