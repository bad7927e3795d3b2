package boreledger.station.bench.ledger;

import boreledger.drivers.capture.Measure;
import boreledger.station.app.SessionLine;
import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.Text;
import java.util.Map;

/** A session of a list in words. */
record SessionWords(Moments moments) {
  private static final Map<Measure, Text> MEASURES =
      Map.of(
          Measure.BORE, BenchText.MEASURE_BORE,
          Measure.GAP, BenchText.MEASURE_GAP,
          Measure.RING_DEPTH, BenchText.MEASURE_RING_DEPTH);

  /** What was gauged, such as {@code End gaps of the top ring}. */
  String title(SessionLine session) {
    return MEASURES.get(session.opened().measure()).with(ring(session));
  }

  /** When, and of which job. */
  String when(SessionLine session) {
    return LedgerText.SESSION_WHEN.with(
        moments.minute(session.opened().wall()), session.opened().jobName());
  }

  /** With which gauge, and how much was said. */
  String with(SessionLine session) {
    return LedgerText.SESSION_WITH.with(
        session.gauge(), Long.toString(session.id()), Long.toString(session.entries()));
  }

  /** A session that was chosen to be compared, in one sentence. */
  String marked(MarkedSession marked) {
    if (marked == null) {
      return LedgerText.COMPARE_NOT_YET.with();
    }
    return LedgerText.COMPARE_SESSION.with(
        Long.toString(marked.line().id()),
        title(marked.line()),
        when(marked.line()),
        marked.ledger().getFileName().toString());
  }

  private static String ring(SessionLine session) {
    return session.opened().ring() == null ? "" : session.opened().ring();
  }
}
