package boreledger.station.results;

import boreledger.station.session.StoredSession.TakenBackReading;
import java.util.Locale;

/** A reading that does not count, in words. */
final class TakenBackText {
  private TakenBackText() {}

  static String of(TakenBackReading struck) {
    return String.format(
        Locale.ROOT,
        "%s: %+.4f mm (entry %d) was taken back: %s%s.",
        struck.reading().position().words(),
        struck.reading().reading().valueMm(),
        struck.reading().seq(),
        struck.by().why(),
        struck.by().who() == null ? "" : " (" + struck.by().who() + ")");
  }
}
