package boreledger.station.gauging;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * A line that says what a test puts into its mouth, before or while it is read. With nothing left
 * to say it is quiet; after it was closed it has ended.
 */
final class ScriptedLine implements Line {
  private final BlockingQueue<Step> steps = new LinkedBlockingQueue<>();
  private final CountDownLatch closed = new CountDownLatch(1);
  private volatile double lastTS;

  private interface Step {
    LineEvent take() throws LineFault;
  }

  /** Bytes that arrive in one piece. */
  ScriptedLine says(double tS, String latin1) {
    Bytes bytes = Bytes.of(latin1.getBytes(StandardCharsets.ISO_8859_1));
    steps.add(() -> new LineEvent.Chunk(tS, bytes));
    return this;
  }

  /** Nothing more will ever come. */
  ScriptedLine ends(double tS) {
    steps.add(() -> new LineEvent.End(tS));
    return this;
  }

  /** The line goes away and is waited for. */
  ScriptedLine goes(double tS, String why) {
    steps.add(() -> new LineEvent.Gone(tS, why));
    return this;
  }

  /** The line that went away is back. */
  ScriptedLine returns(double tS, String how) {
    steps.add(() -> new LineEvent.Back(tS, how));
    return this;
  }

  /** The cable is pulled. */
  ScriptedLine breaks(String why) {
    steps.add(
        () -> {
          throw new LineFault(why);
        });
    return this;
  }

  /** The thread that reads dies of it. */
  ScriptedLine kills() {
    steps.add(
        () -> {
          // The test expects it; the log need not show it.
          Thread.currentThread().setUncaughtExceptionHandler((thread, error) -> {});
          throw new StackOverflowError("thrown by a test, to see a reader die");
        });
    return this;
  }

  boolean isClosed() {
    return closed.getCount() == 0;
  }

  @Override
  public String name() {
    return "scripted line";
  }

  @Override
  public List<String> notes() {
    return List.of("the line is a script");
  }

  @Override
  public LineEvent read(Duration timeout) throws LineFault {
    try {
      Step step = isClosed() ? null : steps.poll(timeout.toNanos(), TimeUnit.NANOSECONDS);
      if (step != null) {
        LineEvent event = step.take();
        lastTS = event.tS();
        return event;
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return isClosed() ? new LineEvent.End(lastTS) : new LineEvent.Quiet(lastTS);
  }

  @Override
  public void send(Bytes request) throws LineFault {
    throw new LineFault("a scripted line only speaks");
  }

  @Override
  public void close() {
    closed.countDown();
    // Wakes a reader that waits for the next step.
    steps.add(() -> new LineEvent.End(lastTS));
  }
}
