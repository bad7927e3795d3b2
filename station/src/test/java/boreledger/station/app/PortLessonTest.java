package boreledger.station.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.learn.PortOpener;
import boreledger.drivers.learn.StepLearner;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import boreledger.station.app.LessonEvent.Broke;
import java.time.Duration;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A lesson at a line that is no real one. */
@Timeout(60)
class PortLessonTest {
  private static final Duration PATIENCE = Duration.ofMinutes(5);

  private final BlockingQueue<LessonEvent> events = new LinkedBlockingQueue<>();
  private final OddLine line = new OddLine();

  @Test
  void whatNobodyExpectedEndsTheLessonIsToldAndFreesThePort() throws Exception {
    lesson(settings -> line).start();

    LessonEvent last = events.take();
    while (!(last instanceof Broke)) {
      last = events.take();
    }

    assertEquals(
        "the lesson was given up, java.lang.IllegalStateException: this cannot be",
        ((Broke) last).why());
    assertTrue(line.closed.await(30, TimeUnit.SECONDS), "the port was not freed");
  }

  @Test
  void aPortThatWasBeingOpenedWhenTheLessonEndedIsFreed() throws Exception {
    CountDownLatch opening = new CountDownLatch(1);
    CountDownLatch ended = new CountDownLatch(1);
    PortLesson lesson =
        lesson(
            settings -> {
              opening.countDown();
              await(ended);
              return line;
            });
    lesson.start();
    await(opening);

    lesson.close();
    ended.countDown();

    assertTrue(line.closed.await(30, TimeUnit.SECONDS), "the port was not freed");
    assertEquals(0, events.size(), events::toString);
  }

  private PortLesson lesson(PortOpener opener) {
    return new PortLesson(new LessonPort(opener, new StepLearner()), PATIENCE, events::add);
  }

  private static void await(CountDownLatch latch) {
    try {
      assertTrue(latch.await(30, TimeUnit.SECONDS));
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }

  /** Fails where no line may. */
  private static final class OddLine implements Line {
    private final CountDownLatch closed = new CountDownLatch(1);

    @Override
    public String name() {
      return "odd line";
    }

    @Override
    public LineEvent read(Duration timeout) {
      throw new IllegalStateException("this cannot be");
    }

    @Override
    public void send(Bytes request) throws LineFault {
      throw new LineFault("odd line: only speaks");
    }

    @Override
    public void close() {
      closed.countDown();
    }
  }
}
