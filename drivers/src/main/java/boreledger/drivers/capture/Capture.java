package boreledger.drivers.capture;

import boreledger.drivers.line.LineEvent;
import java.util.ArrayList;
import java.util.List;

/**
 * A capture file, read completely.
 *
 * @param fileName the file's name without its folder
 * @param chunks what the line delivered, in order
 */
public record Capture(String fileName, CaptureHeader header, List<LineEvent.Chunk> chunks) {
  /** Takes a copy of the list. */
  public Capture {
    chunks = List.copyOf(chunks);
  }

  /** All that the line said: the chunks, then the end. */
  public List<LineEvent> events() {
    List<LineEvent> events = new ArrayList<>(chunks);
    double endTS = chunks.isEmpty() ? 0 : chunks.get(chunks.size() - 1).tS();
    events.add(new LineEvent.End(endTS));
    return events;
  }
}
