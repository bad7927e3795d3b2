package boreledger.drivers.capture;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.io.IOException;
import java.time.Duration;
import java.util.List;

/**
 * A line that is recorded while it is used. What was read is handed on even when it could not be
 * recorded; the next read then breaks the line, so that nobody trusts a recording with a hole.
 */
public final class RecordingLine implements Line {
  private final Line line;
  private final CaptureWriter capture;
  private IOException failure;
  private volatile boolean closed;

  /** Records a line; closes the file with it. */
  public RecordingLine(Line line, CaptureWriter capture) {
    this.line = line;
    this.capture = capture;
  }

  @Override
  public String name() {
    return line.name();
  }

  @Override
  public LineEvent read(Duration timeout) throws LineFault {
    if (failure != null && !closed) {
      throw new LineFault(
          capture.file()
              + ": the recording could not be written, "
              + failure.getMessage()
              + "; make room, or start again without it",
          failure);
    }
    LineEvent event = line.read(timeout);
    record(event);
    return event;
  }

  @Override
  public boolean canBeAsked() {
    return line.canBeAsked();
  }

  @Override
  public void send(Bytes request) throws LineFault {
    line.send(request);
  }

  @Override
  public List<String> notes() {
    return line.notes();
  }

  @Override
  public void close() {
    closed = true;
    line.close();
    synchronized (capture) {
      capture.close();
    }
  }

  private void record(LineEvent event) {
    synchronized (capture) {
      try {
        if (!closed) {
          capture.write(event);
        }
      } catch (IOException e) {
        failure = e;
      }
    }
  }
}
