package boreledger.drivers.capture;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.time.Duration;
import java.util.List;

/**
 * Plays a capture as if its line spoke again.
 *
 * <ul>
 *   <li>Chunks, and where the line went away and came back, keep their recorded times, whatever the
 *       pace.
 *   <li>Paced, the capture begins with the first {@link #read}; a chunk that is not due within the
 *       timeout makes it {@link LineEvent.Quiet}, at the time the capture has come to.
 *   <li>After the last chunk, after {@link #close()} and when its thread is interrupted (the flag
 *       stays set) it answers {@link LineEvent.End}, at the last event's time, and ever again. A
 *       {@code read} that is waiting notices a close after its timeout at the latest.
 *   <li>It cannot be asked for anything.
 * </ul>
 */
public final class CaptureLine implements Line {
  private final String name;
  private final List<LineEvent> said;
  private final Pace pace;
  private volatile boolean closed;
  private int next;
  private double lastS;
  private Double zeroS;

  /** A capture at its start. */
  public CaptureLine(Capture capture, Pace pace) {
    name = "capture " + capture.fileName();
    said = capture.said();
    this.pace = pace;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public LineEvent read(Duration timeout) {
    if (closed || next == said.size() || Thread.currentThread().isInterrupted()) {
      return new LineEvent.End(lastS);
    }
    if (pace.isPaced() && !isDue()) {
      waitFor(timeout);
      if (closed || Thread.currentThread().isInterrupted()) {
        return new LineEvent.End(lastS);
      }
      if (!isDue()) {
        // The clock may have passed the chunk's time since; its event must not run back.
        lastS = Math.max(lastS, Math.min(nowS(), said.get(next).tS()));
        return new LineEvent.Quiet(lastS);
      }
    }
    lastS = said.get(next).tS();
    return said.get(next++);
  }

  @Override
  public void send(Bytes request) throws LineFault {
    throw new LineFault(name + " only plays what it holds and cannot be asked for a reading");
  }

  @Override
  public void close() {
    closed = true;
  }

  private boolean isDue() {
    return said.get(next).tS() <= nowS();
  }

  private double nowS() {
    if (zeroS == null) {
      zeroS = pace.nowS();
    }
    return pace.nowS() - zeroS;
  }

  private void waitFor(Duration timeout) {
    try {
      pace.sleep(said.get(next).tS() - nowS(), timeout);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
