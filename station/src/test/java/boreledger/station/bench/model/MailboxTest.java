package boreledger.station.bench.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.Gauges;
import boreledger.station.gauging.Ending;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingEvent.Live;
import boreledger.station.gauging.GaugingEvent.Over;
import boreledger.station.gauging.GaugingEvent.Progress;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import org.junit.jupiter.api.Test;

class MailboxTest {
  private static final int FLOOD = 100_000;

  private final Queue<Runnable> screen = new ArrayDeque<>();
  private final List<List<GaugingEvent>> read = new ArrayList<>();
  private final Mailbox mailbox = new Mailbox(screen::add, read::add);

  @Test
  void aFloodOfLiveValuesAsksTheScreenOnceAndStaysBounded() {
    for (int i = 0; i < FLOOD; i++) {
      mailbox.put(live(i));
    }

    assertEquals(1, screen.size());
    screen.remove().run();
    assertEquals(Mailbox.MOST_LIVE, read.get(0).size());
    assertEquals(live(FLOOD - 1), read.get(0).get(Mailbox.MOST_LIVE - 1));
  }

  @Test
  void outcomesInAFloodAreAllHandedOverInOrder() {
    int outcomes = 0;
    for (int i = 0; i < FLOOD; i++) {
      mailbox.put(live(i));
      if (i % 100 == 0) {
        mailbox.put(over(outcomes++));
      }
    }
    screen.remove().run();

    List<GaugingEvent> told = read.get(0).stream().filter(Over.class::isInstance).toList();
    assertEquals(1000, told.size());
    for (int i = 0; i < told.size(); i++) {
      assertEquals(over(i), told.get(i));
    }
  }

  @Test
  void theScreenIsAskedAgainAfterEachHandOver() {
    for (int i = 0; i < 3; i++) {
      mailbox.put(live(i));
      assertEquals(1, screen.size());
      screen.remove().run();
    }

    assertEquals(List.of(List.of(live(0)), List.of(live(1)), List.of(live(2))), read);
    assertTrue(screen.isEmpty());
  }

  private static Live live(int number) {
    return new Live(Gauges.sample(number, number));
  }

  private static Over over(int number) {
    return new Over(Ending.LINE_ENDED, new Progress(null, number, FLOOD));
  }
}
