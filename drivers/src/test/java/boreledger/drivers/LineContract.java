package boreledger.drivers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** What every line must do. */
public abstract class LineContract {
  /** Long enough for anything that is on its way. */
  protected static final Duration SOON = Duration.ofMillis(200);

  /** A line on which {@link #content} comes, at once, and then nothing for a while. */
  protected abstract Line line() throws Exception;

  /** The bytes that come. */
  protected abstract Bytes content();

  private List<LineEvent> readContent(Line line) throws LineFault {
    List<LineEvent> events = new ArrayList<>();
    int size = 0;
    while (size < content().size()) {
      LineEvent event = line.read(SOON);
      events.add(event);
      size += event instanceof LineEvent.Chunk chunk ? chunk.bytes().size() : 0;
      assertTrue(!(event instanceof LineEvent.End), events.toString());
    }
    return events;
  }

  private static Bytes bytes(List<LineEvent> events) {
    return events.stream()
        .filter(LineEvent.Chunk.class::isInstance)
        .map(event -> ((LineEvent.Chunk) event).bytes())
        .reduce(Bytes.EMPTY, Bytes::plus);
  }

  @Test
  void bytesComeWholeAndInOrder() throws Exception {
    try (Line line = line()) {
      assertEquals(content(), bytes(readContent(line)));
    }
  }

  @Test
  void timesNeverRunBack() throws Exception {
    Line line = line();
    List<LineEvent> events = readContent(line);
    events.add(line.read(Duration.ofMillis(1)));
    line.close();
    events.add(line.read(SOON));
    double lastS = 0;
    for (LineEvent event : events) {
      assertTrue(event.tS() >= lastS, events.toString());
      lastS = event.tS();
    }
  }

  @Test
  void nameSaysWhatItIs() throws Exception {
    try (Line line = line()) {
      assertTrue(line.name().matches("[a-z]+.* .+"), line.name());
    }
  }

  @Test
  void closedLineIsAtItsEndAndStaysThere() throws Exception {
    Line line = line();
    line.close();
    assertInstanceOf(LineEvent.End.class, line.read(SOON));
    assertInstanceOf(LineEvent.End.class, line.read(SOON));
  }

  @Test
  void closingTwiceIsNoFault() throws Exception {
    Line line = line();
    line.close();
    line.close();
  }

  @Test
  void closeFromAnotherThreadEndsTheReading() throws Exception {
    Line line = line();
    CompletableFuture<LineEvent> end =
        CompletableFuture.supplyAsync(
            () -> {
              try {
                LineEvent event = line.read(SOON);
                while (!(event instanceof LineEvent.End)) {
                  event = line.read(SOON);
                }
                return event;
              } catch (LineFault e) {
                throw new IllegalStateException(e);
              }
            });
    line.close();
    assertInstanceOf(LineEvent.End.class, end.get(10, TimeUnit.SECONDS));
  }
}
