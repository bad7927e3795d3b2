package boreledger.drivers.keyboard;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.DoubleSupplier;

/**
 * A line fed with values that were typed: by a gauge that poses as a keyboard, or into a terminal.
 *
 * <ul>
 *   <li>Each value becomes one chunk, in UTF-8, with the ending that the profile's frames have.
 *   <li>It waits for values without limit and drops none; any thread may bring them.
 *   <li>It ends when it is closed, or after {@link #end} once all values are read.
 *   <li>It cannot be asked for anything.
 * </ul>
 */
public final class KeyboardLine implements Line {
  private static final String IN_PIECES = "came in pieces; press again";

  private final Bytes ending;
  private final DoubleSupplier clockS;
  private final BlockingQueue<LineEvent> events = new LinkedBlockingQueue<>();
  private volatile boolean closed;
  private boolean ended;

  /**
   * A line nobody has typed on yet.
   *
   * @param ending what the profile's frames end with; it stands in the place of Enter
   * @param clockS a monotonic clock in seconds, by which the events are timed
   */
  public KeyboardLine(Bytes ending, DoubleSupplier clockS) {
    this.ending = ending;
    this.clockS = clockS;
  }

  /** Brings a value that was just typed, without its Enter. */
  public void typed(String value) {
    add(bytes(value).plus(ending));
  }

  /** Brings characters after which no Enter came, or not yet: by themselves they are no value. */
  public void unfinished(String text) {
    add(bytes(text));
  }

  /** Brings a value that came in pieces: it is told of, and never read. */
  public synchronized void inPieces(String text) {
    events.add(new LineEvent.Spoilt(clockS.getAsDouble(), bytes(text), IN_PIECES));
  }

  /** Says that nothing more will be typed. */
  public synchronized void end() {
    events.add(new LineEvent.End(clockS.getAsDouble()));
  }

  @Override
  public String name() {
    return "keyboard input";
  }

  @Override
  public LineEvent read(Duration timeout) {
    LineEvent event = null;
    if (!closed && !ended) {
      try {
        event = events.poll(timeout.toNanos(), TimeUnit.NANOSECONDS);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
    ended |= event instanceof LineEvent.End;
    if (closed || ended) {
      return new LineEvent.End(clockS.getAsDouble());
    }
    return event == null ? quiet() : event;
  }

  @Override
  public boolean canBeAsked() {
    return false;
  }

  @Override
  public void send(Bytes request) throws LineFault {
    throw new LineFault(name() + " cannot be asked for a reading; press the gauge's key");
  }

  @Override
  public void close() {
    closed = true;
    end();
  }

  private static Bytes bytes(String text) {
    return Bytes.of(text.getBytes(StandardCharsets.UTF_8));
  }

  private synchronized void add(Bytes bytes) {
    events.add(new LineEvent.Chunk(clockS.getAsDouble(), bytes));
  }

  /** Not timed between a value's time and its turn in the queue, or time would run back. */
  private synchronized LineEvent quiet() {
    LineEvent next = events.poll();
    return next == null ? new LineEvent.Quiet(clockS.getAsDouble()) : next;
  }
}
