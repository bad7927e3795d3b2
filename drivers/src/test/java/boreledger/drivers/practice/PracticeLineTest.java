package boreledger.drivers.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.LineContract;
import boreledger.drivers.capture.Pace;
import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.pick.PlausibleWindow;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class PracticeLineTest {
  private static final Duration TIMEOUT = Duration.ofMillis(200);
  private static final double ZERO_MM = 96.002;
  private static final PracticeTask.Rock SETTING = new PracticeTask.Rock(ZERO_MM, ZERO_MM, 0);

  private static PracticeLine bore(long seed) {
    return new PracticeLine(seed, true, Pace.times(1, new SteppedClock()), 0);
  }

  private static PracticeLine sizes(long seed) {
    return new PracticeLine(seed, false, Pace.times(1, new SteppedClock()), 0);
  }

  /** What the gauge's profile picks until there are so many values, or the time is over. */
  private static List<PickEvent> picks(PracticeLine line, List<? extends PracticeTask> tasks) {
    PlausibleWindow window = new PlausibleWindow(-0.5, 2.0);
    Gauge gauge = new Gauge(PracticeProfiles.bore(), window);
    List<PickEvent> picks = new ArrayList<>();
    int taken = 0;
    line.gauge(tasks.get(0));
    LineEvent event = line.read(TIMEOUT);
    while (taken < tasks.size() && event.tS() < 60 * tasks.size()) {
      for (GaugeEvent said : gauge.feed(event)) {
        if (said instanceof GaugeEvent.Picks pick) {
          picks.add(pick.pick());
          taken += pick.pick() instanceof PickEvent.Picked ? 1 : 0;
          if (taken < tasks.size()) {
            line.gauge(tasks.get(taken));
          }
        }
      }
      event = line.read(TIMEOUT);
    }
    return picks;
  }

  private static List<LineEvent> readFor(PracticeLine line, double lengthS) {
    List<LineEvent> events = new ArrayList<>();
    double fromS = line.read(TIMEOUT).tS();
    do {
      events.add(line.read(TIMEOUT));
    } while (events.get(events.size() - 1).tS() < fromS + lengthS);
    return events;
  }

  private static List<Double> valuesMm(List<LineEvent> events) {
    return events.stream()
        .filter(LineEvent.Chunk.class::isInstance)
        .map(
            event ->
                new String(((LineEvent.Chunk) event).bytes().toArray(), StandardCharsets.US_ASCII))
        .map(text -> Double.parseDouble(text.replace("mm", "").strip()))
        .toList();
  }

  @Test
  void rockingGivesTheDiameterWithinAFewOfItsStandardUncertainties() {
    int values = 0;
    int within = 0;
    int refused = 0;
    double worst = 0;
    for (long seed = 1; seed <= 60; seed++) {
      Random random = new Random(seed);
      List<PracticeTask.Rock> tasks = new ArrayList<>(List.of(SETTING));
      for (int i = 0; i < 4; i++) {
        double diameterMm = 96 + 0.06 * random.nextDouble();
        tasks.add(new PracticeTask.Rock(diameterMm, ZERO_MM, 3e-4 * random.nextGaussian()));
      }
      List<PickEvent> all = picks(bore(seed), tasks);
      refused += all.size() - tasks.size();
      List<PickEvent.Picked> picked =
          all.stream()
              .filter(PickEvent.Picked.class::isInstance)
              .map(PickEvent.Picked.class::cast)
              .toList();
      assertEquals(tasks.size(), picked.size(), "seed " + seed);
      for (int i = 0; i < tasks.size(); i++) {
        double errorMm = Math.abs(picked.get(i).valueMm() - tasks.get(i).diameterMm() + ZERO_MM);
        // The hand may have warmed the gauge by 2.5 um, which the setting ring tells, not this.
        assertTrue(errorMm < 0.006, "seed " + seed + ", task " + i + ": " + errorMm);
        worst = Math.max(worst, errorMm);
        values++;
        within += errorMm < 0.0025 + 2 * picked.get(i).standardUncertaintyMm() ? 1 : 0;
      }
    }
    assertEquals(300, values);
    assertTrue(refused < 0.1 * values, refused + " refused of " + values);
    assertTrue(within >= 0.97 * values, within + " of " + values + ", worst " + worst + " mm");
  }

  @Test
  void sameSeedGivesTheSameBytes() {
    List<List<Double>> runs = new ArrayList<>();
    for (long seed : new long[] {7, 7, 8}) {
      PracticeLine line = bore(seed);
      line.gauge(SETTING);
      runs.add(valuesMm(readFor(line, 15)));
    }
    assertEquals(runs.get(0), runs.get(1));
    assertFalse(runs.get(0).equals(runs.get(2)));
  }

  @Test
  void samplesComeTenASecond() {
    List<LineEvent> events = readFor(bore(1), 20);
    long samples = events.stream().filter(LineEvent.Chunk.class::isInstance).count();
    assertEquals(200, samples, 2);
  }

  @Test
  void untoldGaugeStaysInTheAir() {
    List<Double> valuesMm = valuesMm(readFor(bore(3), 60));
    assertTrue(valuesMm.size() > 500, "some values: " + valuesMm.size());
    assertTrue(valuesMm.stream().allMatch(mm -> mm > 2.7), valuesMm::toString);
  }

  @Test
  void toldGaugeGoesInAndComesOutAgain() {
    PracticeLine line = bore(4);
    line.gauge(SETTING);
    List<Double> valuesMm = valuesMm(readFor(line, 15));
    assertTrue(valuesMm.get(0) > 2.7, "in the air first");
    assertTrue(valuesMm.stream().anyMatch(mm -> mm < 0.01), "square to the ring");
    assertTrue(valuesMm.get(valuesMm.size() - 1) > 2.7, "in the air again");
  }

  @Test
  void handThatHearsNothingGaugesThePlaceOnceMore() {
    PracticeLine line = sizes(5);
    line.gauge(new PracticeTask.Type(0.45));
    List<Double> valuesMm = valuesMm(readFor(line, 12));
    assertEquals(2, valuesMm.size(), valuesMm::toString);
    valuesMm.forEach(mm -> assertEquals(0.45, mm, 0.01));
  }

  @Test
  void handWaitsToBeToldOfTheNextPlace() {
    PracticeLine line = sizes(6);
    assertEquals(List.of(), valuesMm(readFor(line, 60)));
    line.gauge(new PracticeTask.Type(0.45));
    assertEquals(1, valuesMm(readFor(line, 5)).size());
    line.gauge(new PracticeTask.Type(0.52));
    assertEquals(0.52, valuesMm(readFor(line, 5)).get(0), 0.01);
  }

  @Test
  void clockGoesOnFromWhereItIsToldTo() {
    PracticeLine line = new PracticeLine(1, true, Pace.times(20, new SteppedClock()), 100);
    double tS = line.read(TIMEOUT).tS();
    assertTrue(tS >= 100 && tS < 101, "100 s and a bit: " + tS);
  }

  @Test
  void practiceIsAskedForNothing() {
    LineFault fault = assertThrows(LineFault.class, () -> bore(1).send(Bytes.ofHex("01")));
    assertEquals(
        "practice gauge, seed 1 is asked for nothing; it gauges where it is told to",
        fault.getMessage());
  }

  @Test
  void interruptedThreadIsAtTheEndAndKeepsItsFlag() {
    Thread.currentThread().interrupt();
    LineEvent event = bore(1).read(TIMEOUT);
    assertTrue(Thread.interrupted());
    assertInstanceOf(LineEvent.End.class, event);
  }

  @Nested
  class AsALine extends LineContract {
    @Override
    protected Line line() {
      PracticeLine line = new PracticeLine(1, false, Pace.times(100), 0);
      line.gauge(new PracticeTask.Type(0.45));
      return line;
    }

    @Override
    protected Bytes content() {
      PracticeLine same = sizes(1);
      same.gauge(new PracticeTask.Type(0.45));
      LineEvent event = same.read(TIMEOUT);
      while (!(event instanceof LineEvent.Chunk)) {
        event = same.read(TIMEOUT);
      }
      return ((LineEvent.Chunk) event).bytes();
    }
  }
}
