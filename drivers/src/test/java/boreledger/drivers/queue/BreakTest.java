package boreledger.drivers.queue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import boreledger.drivers.capture.Pace;
import boreledger.drivers.gauge.Gauge;
import boreledger.drivers.gauge.GaugeEvent;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.practice.PracticeLine;
import boreledger.drivers.practice.PracticeProfiles;
import boreledger.drivers.practice.PracticeTask;
import boreledger.drivers.profile.GaugeProfiles;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What becomes of what was unfinished when a line goes away for a while. */
class BreakTest {
  private static final Duration LONG = Duration.ofSeconds(30);

  private static Line saying(List<LineEvent> events) {
    Iterator<LineEvent> left = events.iterator();
    return new Line() {
      @Override
      public String name() {
        return "a line";
      }

      @Override
      public LineEvent read(Duration timeout) {
        return left.next();
      }

      @Override
      public void send(Bytes request) {}

      @Override
      public void close() {}
    };
  }

  private static List<QueueItem> read(Gauge gauge, List<LineEvent> events) throws Exception {
    CaptureQueue queue = new CaptureQueue(10_000);
    new GaugeReader("one", saying(events), gauge, queue).run();
    List<QueueItem> items = new ArrayList<>();
    for (var item = queue.poll(LONG); item.isPresent(); item = queue.poll(Duration.ZERO)) {
      items.add(item.get());
    }
    return items;
  }

  private static LineEvent.Chunk text(double tS, String ascii) {
    return new LineEvent.Chunk(tS, Bytes.of(ascii.getBytes(StandardCharsets.US_ASCII)));
  }

  private static List<Object> important(List<QueueItem> items) {
    List<Object> important = new ArrayList<>();
    for (QueueItem item : items) {
      if (item instanceof QueueItem.Said said && said.event() instanceof GaugeEvent.Picks picks) {
        important.add(picks.pick());
      } else if (item instanceof QueueItem.Said said
          && said.event() instanceof GaugeEvent.Bad bad) {
        important.add(bad.rejected().raw().toHex());
      } else if (!(item instanceof QueueItem.Said)) {
        important.add(item);
      }
    }
    return important;
  }

  @Test
  void beginningOfAFrameIsRejectedBeforeTheBreakAndNotJoinedWithWhatFollows() throws Exception {
    Gauge gauge = new Gauge(GaugeProfiles.find("ascii-line-size", List.of()), null);
    List<Object> seen =
        important(
            read(
                gauge,
                List.of(
                    text(1, "0.4"),
                    new LineEvent.Gone(2, "gone"),
                    new LineEvent.Quiet(3),
                    new LineEvent.Back(4, "back"),
                    text(5, "5.5\n"),
                    new LineEvent.End(6))));
    assertEquals("302e34", seen.get(0));
    assertEquals(new QueueItem.Gone("one", 2, "gone"), seen.get(1));
    assertEquals(new QueueItem.Back("one", 4, "back"), seen.get(2));
    assertEquals(5.5, assertInstanceOf(PickEvent.Picked.class, seen.get(3)).valueMm());
    assertEquals(new QueueItem.Ended("one", 6), seen.get(4));
    assertEquals(5, seen.size());
  }

  @Test
  void rockingThatIsCutShortIsNoReadingAndRockingAgainIs() throws Exception {
    PracticeLine line = new PracticeLine(5, true, Pace.times(200), 0);
    List<LineEvent> events = new ArrayList<>(visit(line));
    while (valueMm(events.get(events.size() - 1)) > 1) {
      events.remove(events.size() - 1);
    }
    double cutTS = events.get(events.size() - 1).tS();
    List<LineEvent> again = visit(line);
    events.add(new LineEvent.Gone(cutTS, "gone"));
    events.add(new LineEvent.Back(again.get(0).tS(), "back"));
    events.addAll(again);
    events.add(new LineEvent.End(again.get(again.size() - 1).tS()));
    List<Object> seen = important(read(new Gauge(PracticeProfiles.bore(), null), events));
    PickEvent.NotPicked none = assertInstanceOf(PickEvent.NotPicked.class, seen.get(0));
    assertEquals("the line went away before this reading had ended", none.why());
    assertEquals(new QueueItem.Gone("one", cutTS, "gone"), seen.get(1));
    assertEquals(0.03, assertInstanceOf(PickEvent.Picked.class, seen.get(3)).valueMm(), 0.005);
    assertEquals(5, seen.size(), seen::toString);
  }

  /** From the air before a bore to the air after it. */
  private static List<LineEvent> visit(PracticeLine line) {
    line.gauge(new PracticeTask.Rock(96.03, 96, 0));
    List<LineEvent> events = new ArrayList<>();
    boolean in = false;
    boolean out = false;
    while (!out) {
      if (line.read(Duration.ofMillis(20)) instanceof LineEvent.Chunk chunk) {
        events.add(chunk);
        in |= valueMm(chunk) < 1;
        out = in && valueMm(chunk) > 2.7;
      }
    }
    return events;
  }

  private static double valueMm(LineEvent event) {
    byte[] ascii = ((LineEvent.Chunk) event).bytes().toArray();
    return Double.parseDouble(new String(ascii, StandardCharsets.US_ASCII).strip());
  }
}
