package boreledger.drivers.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.LineContract;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class ReconnectingLineTest {
  private static final Duration TIMEOUT = Duration.ofMillis(50);

  private final List<Long> triesNs = new ArrayList<>();
  private final Deque<Opening> answers = new ArrayDeque<>();

  /** A line that gives its chunks one by one and then breaks, or is quiet. */
  private static final class Wire implements Line {
    final Deque<LineEvent> events = new ArrayDeque<>();
    final String name;
    boolean breaks = true;
    boolean closed;

    Wire(String name, String... hex) {
      this.name = name;
      for (String each : hex) {
        events.add(new LineEvent.Chunk(1, Bytes.ofHex(each)));
      }
    }

    @Override
    public String name() {
      return name;
    }

    @Override
    public LineEvent read(Duration timeout) throws LineFault {
      if (closed) {
        return new LineEvent.End(1);
      } else if (!events.isEmpty()) {
        return events.remove();
      } else if (breaks) {
        throw new LineFault("the wire is cut");
      }
      return new LineEvent.Quiet(1);
    }

    @Override
    public void send(Bytes request) throws LineFault {
      throw new LineFault("the wire is cut");
    }

    @Override
    public void close() {
      closed = true;
    }
  }

  private ReconnectingLine lasting(Line first) {
    return new ReconnectingLine(first, this::tryOpen, () -> 1);
  }

  private Optional<Line> tryOpen() throws LineFault {
    triesNs.add(System.nanoTime());
    return answers.isEmpty() ? Optional.empty() : answers.remove().tryOpen();
  }

  private void answer(Line line) {
    answers.add(() -> Optional.of(line));
  }

  private void refuse(String why) {
    answers.add(
        () -> {
          throw new LineFault(why);
        });
  }

  /** The events that are no quiet moments, until there are so many. */
  private static List<LineEvent> news(Line line, int count) throws LineFault {
    List<LineEvent> news = new ArrayList<>();
    long endNs = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
    while (news.size() < count && System.nanoTime() < endNs) {
      LineEvent event = line.read(TIMEOUT);
      if (!(event instanceof LineEvent.Quiet)) {
        news.add(event);
      }
    }
    return news;
  }

  private static LineEvent chunk(String hex) {
    return new LineEvent.Chunk(1, Bytes.ofHex(hex));
  }

  @Test
  void brokenLineIsGoneThenBackThenSpeaksOn() throws Exception {
    Wire first = new Wire("wire one", "01");
    answer(new Wire("wire two", "02"));
    assertEquals(
        List.of(
            chunk("01"),
            new LineEvent.Gone(
                1,
                "wire one: the gauge, its cable or its radio link has gone; waiting for it to come"
                    + " back"),
            new LineEvent.Back(1, "wire two: it is back"),
            chunk("02")),
        news(lasting(first), 4));
    assertTrue(first.closed, "what broke is closed");
  }

  @Test
  void manyBreaksAreAllSurvived() throws Exception {
    for (int i = 0; i < 50; i++) {
      answer(new Wire("wire " + i, String.format("%02x", i)));
    }
    List<LineEvent> news = news(lasting(new Wire("first wire")), 151);
    assertEquals(
        50,
        news.stream().filter(event -> event instanceof LineEvent.Chunk).count(),
        news::toString);
    assertEquals(chunk("31"), news.get(149));
  }

  @Test
  void lookingGoesOnAtLeastEverySecondAndNotInATightLoop() throws Exception {
    for (int i = 0; i < 6; i++) {
      answers.add(Optional::empty);
    }
    answer(new Wire("wire two"));
    news(lasting(new Wire("wire one")), 2);
    assertEquals(7, triesNs.size());
    double[] waitedS = new double[6];
    for (int i = 0; i < waitedS.length; i++) {
      waitedS[i] = (triesNs.get(i + 1) - triesNs.get(i)) * 1e-9;
    }
    assertEquals(0.1, waitedS[0], 0.5);
    for (double each : waitedS) {
      assertTrue(each >= 0.09 && each < 1.9, each + " s");
    }
    assertTrue(waitedS[5] >= 0.99, waitedS[5] + " s");
  }

  @Test
  void lastingRefusalIsToldOnce() throws Exception {
    for (int i = 0; i < 5; i++) {
      refuse("another device is there");
    }
    answer(new Wire("wire two"));
    List<LineEvent> news = news(lasting(new Wire("wire one")), 3);
    assertEquals(new LineEvent.Gone(1, "another device is there"), news.get(1));
    assertInstanceOf(LineEvent.Back.class, news.get(2));
  }

  @Test
  void passingRefusalIsNotTold() throws Exception {
    refuse("it has just gone");
    refuse("you may not use it");
    answer(new Wire("wire two"));
    assertInstanceOf(LineEvent.Back.class, news(lasting(new Wire("wire one")), 2).get(1));
  }

  @Test
  void requestThatCannotBeSentMakesItGone() throws Exception {
    Wire first = new Wire("wire one", "01");
    answer(new Wire("wire two", "02"));
    ReconnectingLine line = lasting(first);
    line.send(Bytes.ofHex("3f"));
    List<LineEvent> news = news(line, 3);
    assertInstanceOf(LineEvent.Gone.class, news.get(0));
    assertEquals(chunk("02"), news.get(2));
  }

  @Test
  void closeWhileItIsAwayEndsIt() throws Exception {
    ReconnectingLine line = lasting(new Wire("wire one"));
    assertInstanceOf(LineEvent.Gone.class, line.read(TIMEOUT));
    line.close();
    assertInstanceOf(LineEvent.End.class, line.read(TIMEOUT));
  }

  @Test
  void lineThatOpensWhileItIsClosedIsClosedToo() throws Exception {
    Wire late = new Wire("wire two");
    ReconnectingLine line = lasting(new Wire("wire one"));
    answers.add(
        () -> {
          line.close();
          return Optional.of(late);
        });
    assertInstanceOf(LineEvent.Gone.class, line.read(TIMEOUT));
    assertInstanceOf(LineEvent.End.class, line.read(TIMEOUT));
    assertTrue(late.closed);
  }

  @Nested
  class AsALine extends LineContract {
    @Override
    protected Line line() {
      Wire wire = new Wire("wire one", "01", "0203");
      wire.breaks = false;
      return lasting(wire);
    }

    @Override
    protected Bytes content() {
      return Bytes.ofHex("010203");
    }
  }
}
