package boreledger.drivers.capture;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.time.Duration;
import java.util.Iterator;

/** A capture file as a line: its chunks at their times, then the end. */
public final class CaptureLine implements Line {
  private final String name;
  private final Iterator<LineEvent.Chunk> chunks;
  private final Pace pace;
  private LineEvent.Chunk next;
  private double nowTS;
  private volatile boolean closed;

  /** Plays a capture at a pace. */
  public CaptureLine(Capture capture, Pace pace) {
    this.name = "capture file " + capture.fileName();
    this.chunks = capture.chunks().iterator();
    this.pace = pace;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public LineEvent read(Duration timeout) throws LineFault {
    if (next == null && chunks.hasNext()) {
      next = chunks.next();
    }
    if (closed || next == null) {
      return new LineEvent.End(nowTS);
    }
    if (!pace.waitUntil(next.tS(), timeout)) {
      nowTS = Math.max(nowTS, Math.min(pace.nowTS(), next.tS()));
      return new LineEvent.Quiet(nowTS);
    }
    LineEvent.Chunk chunk = next;
    next = null;
    nowTS = chunk.tS();
    return chunk;
  }

  @Override
  public void send(Bytes request) throws LineFault {
    throw new LineFault(name + ": a recorded line cannot be asked for anything");
  }

  @Override
  public void close() {
    closed = true;
  }
}
