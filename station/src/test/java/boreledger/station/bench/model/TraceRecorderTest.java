package boreledger.station.bench.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.Gauges;
import boreledger.station.bench.model.Trace.Point;
import java.util.Random;
import org.junit.jupiter.api.Test;

class TraceRecorderTest {
  private final TraceRecorder recorder = new TraceRecorder(-0.5, 1.5, mm -> mm + " mm");

  @Test
  void withoutSamplesThereIsNothingToSee() {
    assertEquals("No smallest value yet", recorder.trace().words());
    assertEquals(0, recorder.trace().points().size());
  }

  @Test
  void theSmallestValueSoFarIsMarked() {
    add(0.0, 0.3);
    add(0.1, 0.01);
    add(0.2, 0.4);

    assertEquals(new Point(0.1, 0.01), recorder.trace().smallest());
    assertEquals("Smallest so far 0.01 mm", recorder.trace().words());
  }

  @Test
  void theSmallestValueStartsAfreshWithTheNextReading() {
    add(0.0, 0.01);
    recorder.restart();
    assertNull(recorder.trace().smallest());
    add(0.1, 0.2);

    assertEquals(new Point(0.1, 0.2), recorder.trace().smallest());
    assertEquals(2, recorder.trace().points().size());
  }

  @Test
  void freeAirIsNeverTheSmallestValueAndDoesNotFlattenThePicture() {
    add(0.0, 2.6);
    assertNull(recorder.trace().smallest());
    add(0.1, 0.30);
    add(0.2, 0.10);

    assertEquals(new Point(0.2, 0.10), recorder.trace().smallest());
    assertEquals(0.3, recorder.trace().highMm(), 1e-9);
  }

  @Test
  void onlyTheLastTenSecondsAreKept() {
    for (int i = 0; i <= 300; i++) {
      add(i * 0.1, 0.1);
    }
    Trace trace = recorder.trace();

    assertEquals(20, trace.fromS(), 1e-9);
    assertTrue(trace.points().get(0).tS() >= 19.9, "oldest " + trace.points().get(0).tS());
  }

  @Test
  void noGaugeIsTooFastAndNoMinimumIsLost() {
    long seed = 20310506;
    Random random = new Random(seed);
    double smallest = 1;
    for (int i = 0; i < 100_000; i++) {
      double value = random.nextDouble();
      smallest = Math.min(smallest, value);
      add(i * 0.0001, value);
    }
    Trace trace = recorder.trace();

    assertTrue(trace.points().size() <= 802, "points " + trace.points().size());
    double lowest = trace.points().stream().mapToDouble(Point::valueMm).min().orElseThrow();
    assertEquals(smallest, lowest, "seed " + seed);
    assertEquals(smallest, trace.smallest().valueMm(), "seed " + seed);
  }

  private void add(double tS, double valueMm) {
    recorder.add(Gauges.sample(tS, valueMm));
  }
}
