package boreledger.station.bench.model;

import boreledger.drivers.decoder.Sample;
import boreledger.drivers.profile.PickSpec;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.session.Plausible;
import java.util.function.DoubleFunction;

/** What one session's gauge shows, and how its line is. */
final class Hearing {
  private final LineWatch line;
  private final TraceRecorder trace;
  private Sample last;

  /**
   * Nothing heard yet.
   *
   * @param words a value in millimetres as the gauge gave it
   */
  Hearing(GaugingEvent.Began began, DoubleFunction<String> words) {
    Plausible plausible = began.start().plausible();
    line = new LineWatch(began.start().line(), began.lineNotes());
    trace = new TraceRecorder(plausible.lowMm(), plausible.highMm(), words);
  }

  /** How its line is. */
  LineWatch line() {
    return line;
  }

  /** The gauge showed something; times are in seconds. */
  void sampled(Sample sample, double nowS) {
    last = sample;
    line.sampled(nowS);
    trace.add(sample);
  }

  /** What was rocked so far has become a reading, or nothing. */
  void restart() {
    trace.restart();
  }

  /** Shows how it is now. */
  void show(Sitting sitting, double nowS, Shown shown) {
    shown.line.set(line.health(nowS));
    boolean rocks = sitting.start().gauge().pick() instanceof PickSpec.Rock;
    shown.trace.set(rocks ? trace.trace() : null);
    shown.live.set(
        last == null
            ? LiveValue.none(sitting.lengths())
            : LiveValue.of(sitting, last, line.ageS(nowS)));
  }
}
