package boreledger.drivers.queue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.GaugeProfiles;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class GaugeReaderTest {
  private static final Duration LONG = Duration.ofSeconds(30);

  private final CaptureQueue queue = new CaptureQueue(3);

  private static Gauge gauge() throws Exception {
    return new Gauge(GaugeProfiles.find("ascii-line-size", List.of()), null);
  }

  private Thread start(String name, ScriptedLine line) throws Exception {
    return new GaugeReader(name, line, gauge(), queue).start();
  }

  private static void assertStopped(Thread thread, ScriptedLine line) throws Exception {
    thread.join(LONG.toMillis());
    assertFalse(thread.isAlive());
    assertEquals(0, line.closed.getCount());
  }

  /** Takes from the queue up to the item that says that the gauge has stopped. */
  private List<QueueItem> takeAll() throws InterruptedException {
    List<QueueItem> items = new ArrayList<>();
    QueueItem item;
    do {
      item = queue.poll(LONG).orElseThrow();
      items.add(item);
    } while (item instanceof QueueItem.Said);
    return items;
  }

  private static List<Double> picked(List<QueueItem> items) {
    return items.stream()
        .filter(QueueItem.Said.class::isInstance)
        .map(item -> ((QueueItem.Said) item).event())
        .filter(GaugeEvent.Picks.class::isInstance)
        .map(event -> ((PickEvent.Picked) ((GaugeEvent.Picks) event).pick()).valueMm())
        .toList();
  }

  @Test
  void endedLineDeliversEverythingThenItsEnd() throws Exception {
    ScriptedLine line = new ScriptedLine(() -> new LineEvent.End(3));
    line.text(1, "0.45\n0.4").text(2, "6\n");
    Thread thread = start("gap", line);
    List<QueueItem> items = takeAll();
    assertEquals(List.of(0.45, 0.46), picked(items));
    assertEquals(new QueueItem.Ended("gap", 3), items.get(items.size() - 1));
    assertStopped(thread, line);
  }

  @Test
  void brokenLineDeliversWhatWasReadBeforeTheFault() throws Exception {
    LineFault fault = new LineFault("the cable is out");
    ScriptedLine line =
        new ScriptedLine(
            () -> {
              throw fault;
            });
    Thread thread = start("gap", line.text(1, "0.45\n").text(2, "0.4"));
    List<QueueItem> items = takeAll();
    assertEquals(List.of(0.45), picked(items));
    GaugeEvent rest = ((QueueItem.Said) items.get(items.size() - 2)).event();
    assertEquals(
        "ended without its ending", assertInstanceOf(GaugeEvent.Bad.class, rest).rejected().why());
    assertEquals(new QueueItem.Broke("gap", 2, fault), items.get(items.size() - 1));
    assertStopped(thread, line);
  }

  @Test
  void faultOfTheProgramIsSeenByTheTaker() throws Exception {
    ScriptedLine line =
        new ScriptedLine(
            () -> {
              throw new IllegalStateException("no such state");
            });
    Thread thread = start("gap", line.text(1, "0.45\n"));
    List<QueueItem> items = takeAll();
    assertEquals(List.of(0.45), picked(items));
    QueueItem last = items.get(items.size() - 1);
    assertEquals(
        "scripted line: reading was given up, java.lang.IllegalStateException: no such state",
        assertInstanceOf(QueueItem.Broke.class, last).fault().getMessage());
    assertStopped(thread, line);
  }

  @Test
  void faultOfTheGaugeBehindABreakDoesNotHideTheBreak() throws Exception {
    LineFault fault = new LineFault("the cable is out");
    ScriptedLine line =
        new ScriptedLine(
            () -> {
              throw fault;
            });
    Gauge gauge = mock(Gauge.class);
    when(gauge.feed(any())).thenThrow(new IllegalStateException("no such state"));
    Thread thread = new GaugeReader("gap", line, gauge, queue).start();
    List<QueueItem> items = takeAll();
    assertEquals(List.of(new QueueItem.Broke("gap", 0, fault)), items);
    assertEquals(
        "scripted line: reading was given up, java.lang.IllegalStateException: no such state",
        fault.getSuppressed()[0].getMessage());
    assertStopped(thread, line);
  }

  @Test
  void slowTakerSlowsTheLineAndLosesNoReading() throws Exception {
    ScriptedLine line = new ScriptedLine(() -> new LineEvent.End(1000));
    List<Double> expected = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      line.text(i, "0." + (100 + i % 900) + "\n");
      expected.add((100 + i % 900) / 1000.0);
    }
    start("gap", line);
    assertEquals(expected, picked(takeAll()));
  }

  @Test
  void closedQueueStopsAReaderThatWaitsForRoom() throws Exception {
    ScriptedLine line = new ScriptedLine(() -> new LineEvent.End(2));
    Thread thread = start("gap", line.text(1, "1\n2\n3\n4\n5\n6\n7\n"));
    assertTrue(queue.poll(LONG).isPresent());
    queue.close();
    assertStopped(thread, line);
  }

  @Test
  void closedQueueStopsAReaderWhoseLineIsQuiet() throws Exception {
    ScriptedLine line = new ScriptedLine(() -> new LineEvent.Quiet(1));
    Thread thread = start("gap", line);
    queue.close();
    assertStopped(thread, line);
  }

  @Test
  void interruptedReaderClosesItsLine() throws Exception {
    ScriptedLine line = new ScriptedLine(() -> new LineEvent.End(2));
    Thread thread = start("gap", line.text(1, "1\n2\n3\n4\n5\n6\n7\n"));
    thread.interrupt();
    assertTrue(line.closed.await(LONG.toSeconds(), TimeUnit.SECONDS));
    assertStopped(thread, line);
  }

  @Test
  void interruptedReaderOfAQuietLineClosesIt() throws Exception {
    ScriptedLine line = new ScriptedLine(() -> new LineEvent.Quiet(1));
    Thread thread = start("gap", line);
    thread.interrupt();
    assertStopped(thread, line);
  }

  @Test
  void severalGaugesShareAQueue() throws Exception {
    start("one", new ScriptedLine(() -> new LineEvent.End(9)).text(1, "1\n2\n3\n"));
    start("two", new ScriptedLine(() -> new LineEvent.End(9)).text(1, "4\n5\n6\n"));
    List<QueueItem> items = new ArrayList<>(takeAll());
    items.addAll(takeAll());
    for (String name : List.of("one", "two")) {
      List<QueueItem> own = items.stream().filter(item -> item.gauge().equals(name)).toList();
      assertEquals(
          name.equals("one") ? List.of(1.0, 2.0, 3.0) : List.of(4.0, 5.0, 6.0), picked(own));
      assertEquals(new QueueItem.Ended(name, 9), own.get(own.size() - 1));
    }
  }

  @Test
  void readerDoesNotKeepTheProgramAlive() throws Exception {
    Thread thread = start("gap", new ScriptedLine(() -> new LineEvent.Quiet(1)));
    assertTrue(thread.isDaemon());
    queue.close();
  }
}
