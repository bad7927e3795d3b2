package boreledger.drivers.capture;

import boreledger.drivers.line.LineEvent;
import java.util.ArrayList;
import java.util.List;

/**
 * A capture file, read completely.
 *
 * @param fileName the file's name without its folder
 * @param said what the line said, in order: chunks, and where it went away and came back
 */
public record Capture(String fileName, CaptureHeader header, List<LineEvent> said) {
  /** Takes a copy of the list. */
  public Capture {
    said = List.copyOf(said);
  }

  /** What the line delivered, in order. */
  public List<LineEvent.Chunk> chunks() {
    return said.stream()
        .filter(LineEvent.Chunk.class::isInstance)
        .map(LineEvent.Chunk.class::cast)
        .toList();
  }

  /**
   * The chunks, then the end. Where the line went away there is an end too: what was cut off there
   * must not be joined with what came after.
   */
  public List<LineEvent> events() {
    List<LineEvent> events = new ArrayList<>();
    for (LineEvent event : said) {
      if (event instanceof LineEvent.Gone) {
        events.add(new LineEvent.End(event.tS()));
      } else if (event instanceof LineEvent.Chunk) {
        events.add(event);
      }
    }
    double endTS = said.isEmpty() ? 0 : said.get(said.size() - 1).tS();
    events.add(new LineEvent.End(endTS));
    return events;
  }
}
