package boreledger.station.bench.model;

import boreledger.station.bench.words.Text;
import boreledger.station.session.SessionStart;
import java.util.Objects;

/**
 * What stands over the bench.
 *
 * @param job the job's name; empty before the first session
 * @param gauged what is gauged, such as {@code top ring end gaps}
 * @param gauge the gauge's name; empty before the first session
 */
public record Heading(String job, String gauged, String gauge) {
  static Heading none() {
    return new Heading("", Text.HEADING_NONE.with(), "");
  }

  static Heading of(Sitting sitting) {
    String what = gauged(sitting.start());
    return new Heading(
        sitting.job().name(),
        sitting.resumed() ? Text.HEADING_RESUMED.with(what) : what,
        Objects.requireNonNullElse(sitting.start().gauge().name(), ""));
  }

  /** What a session gauges, such as {@code End gaps, top ring}. */
  static String gauged(SessionStart start) {
    return switch (start.measure()) {
      case BORE -> Text.MEASURE_BORE.with();
      case GAP -> Text.MEASURE_GAP.with(start.ring().name());
      case RING_DEPTH -> Text.MEASURE_RING_DEPTH.with(start.ring().name());
    };
  }
}
