package boreledger.station.app;

import boreledger.drivers.learn.GaugeLearner;
import boreledger.drivers.learn.Learned;
import boreledger.drivers.learn.NextValue;
import boreledger.drivers.learn.Open;
import boreledger.drivers.learn.ShownValue;
import boreledger.drivers.line.LineEvent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** Learns a gauge from a recording; it learns and tells on the thread that calls. */
final class RecordedLesson implements GaugeLesson {
  private final List<LineEvent.Chunk> chunks;
  private final Consumer<LessonEvent> told;
  private final List<ShownValue> shown = new ArrayList<>();

  RecordedLesson(List<LineEvent.Chunk> chunks, Consumer<LessonEvent> told) {
    this.chunks = List.copyOf(chunks);
    this.told = told;
  }

  /** Tells all bytes and that nothing is known yet. */
  void start() {
    Burst burst = new Burst();
    for (LineEvent.Chunk chunk : chunks) {
      burst.add(chunk);
      told.accept(burst.arrived());
    }
    tell();
  }

  @Override
  public synchronized void shows(ShownValue value) {
    shown.add(value);
    tell();
  }

  @Override
  public synchronized void takeBack() {
    if (!shown.isEmpty()) {
      shown.remove(shown.size() - 1);
      tell();
    }
  }

  @Override
  public void tryNext() {
    // A recording was made at whatever setting it was.
  }

  @Override
  public void close() {
    // Nothing is open.
  }

  private void tell() {
    told.accept(new LessonEvent.Told(shown, learned()));
  }

  private Learned learned() {
    if (shown.isEmpty()) {
      NextValue first = new NextValue(BigDecimal.ZERO, "the first value", null);
      return new Learned(false, List.of(), "no value was named yet", first, Set.of(Open.SIZES));
    }
    return GaugeLearner.learn(chunks, shown, Optional.empty());
  }
}
