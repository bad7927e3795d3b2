package boreledger.station.ledger;

import boreledger.station.ledger.EntryBody.SessionOpened;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The order of sessions when some of them come from other ledgers. */
final class SessionOrder {
  private SessionOrder() {}

  /**
   * Both kinds of openings by the clock on the wall. The ledger's own keep their order whatever
   * their clock said: it may have been set back between two of them.
   */
  static List<Entry> merged(List<Entry> own, List<Entry> imported) {
    List<Entry> all = new ArrayList<>(own);
    int at = 0;
    for (Entry each : imported.stream().sorted(Comparator.comparing(SessionOrder::wall)).toList()) {
      while (at < all.size() && !wall(all.get(at)).isAfter(wall(each))) {
        at++;
      }
      all.add(at, each);
      at++;
    }
    return List.copyOf(all);
  }

  private static Instant wall(Entry opening) {
    return ((SessionOpened) opening.body()).wall();
  }
}
