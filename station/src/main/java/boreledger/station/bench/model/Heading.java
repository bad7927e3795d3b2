package boreledger.station.bench.model;

import boreledger.station.bench.words.BenchText;
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
    return new Heading("", BenchText.HEADING_NONE.with(), "");
  }

  static Heading of(Sitting sitting) {
    String what = gauged(sitting.start());
    return new Heading(
        sitting.job().name(),
        sitting.resumed() ? BenchText.HEADING_RESUMED.with(what) : what,
        Objects.requireNonNullElse(sitting.start().gauge().name(), ""));
  }

  /** What a session gauges, such as {@code End gaps, top ring}. */
  static String gauged(SessionStart start) {
    return switch (start.measure()) {
      case BORE -> BenchText.MEASURE_BORE.with();
      case GAP -> BenchText.MEASURE_GAP.with(start.ring().name());
      case RING_DEPTH -> BenchText.MEASURE_RING_DEPTH.with(start.ring().name());
    };
  }
}
