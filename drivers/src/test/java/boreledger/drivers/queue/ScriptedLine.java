package boreledger.drivers.queue;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Queue;
import java.util.concurrent.CountDownLatch;

/** A line that says what a test wrote down, then for ever what it says in the end. */
final class ScriptedLine implements Line {
  /** What a line does when it is read. */
  interface Saying {
    LineEvent say() throws LineFault;
  }

  final CountDownLatch closed = new CountDownLatch(1);
  private final Queue<Saying> script = new ArrayDeque<>();
  private final Saying inTheEnd;

  ScriptedLine(Saying inTheEnd) {
    this.inTheEnd = inTheEnd;
  }

  ScriptedLine text(double tS, String text) {
    Bytes bytes = Bytes.of(text.getBytes(StandardCharsets.US_ASCII));
    script.add(() -> new LineEvent.Chunk(tS, bytes));
    return this;
  }

  @Override
  public String name() {
    return "scripted line";
  }

  @Override
  public LineEvent read(Duration timeout) throws LineFault {
    Saying next = script.poll();
    return next == null ? inTheEnd.say() : next.say();
  }

  @Override
  public void send(Bytes request) {
    throw new UnsupportedOperationException();
  }

  @Override
  public void close() {
    closed.countDown();
  }
}
