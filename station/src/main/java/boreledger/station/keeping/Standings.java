package boreledger.station.keeping;

import boreledger.station.keeping.CsvRow.Standing;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.StoredSession;
import boreledger.station.session.StoredSession.StoredReading;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which readings of a session count, and why the others do not. */
final class Standings {
  private final List<StoredReading> readings;
  private final Map<Position, Long> last = new HashMap<>();

  Standings(StoredSession session) {
    readings = session.readings();
    session.readings().forEach(each -> last.put(each.position(), each.seq()));
  }

  /** All readings in the order they were taken. */
  List<StoredReading> readings() {
    return readings;
  }

  /** Whether one of them counts: every setting check, and at each position the last one there. */
  Standing of(StoredReading reading) {
    if (reading.position() instanceof SettingCheck) {
      return Standing.IN_FORCE;
    }
    long inForce = last.get(reading.position());
    return inForce == reading.seq()
        ? Standing.IN_FORCE
        : new Standing("replaced", "entry " + inForce + " was taken later at the same place");
  }
}
