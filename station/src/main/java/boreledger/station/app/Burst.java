package boreledger.station.app;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** What a line sent without a pause: one press of a gauge's key, as far as that can be told. */
final class Burst {
  private static final double PAUSE_S = 0.4;
  private static final double LONGEST_S = 3;

  private final List<LineEvent.Chunk> chunks = new ArrayList<>();
  private Bytes bytes = Bytes.EMPTY;
  private int number;

  /** Takes bytes; those that come after a pause begin another burst. */
  void add(LineEvent.Chunk chunk) {
    if (chunks.isEmpty() || isOver(chunk.tS())) {
      forget();
      number++;
    }
    chunks.add(chunk);
    bytes = bytes.plus(chunk.bytes());
  }

  boolean isEmpty() {
    return chunks.isEmpty();
  }

  /** Whether the line has paused since. */
  boolean isOver(double nowTS) {
    return nowTS - chunks.get(chunks.size() - 1).tS() >= PAUSE_S;
  }

  /** Whether it lasts longer than any press. */
  boolean isEndless(double nowTS) {
    return nowTS - chunks.get(0).tS() > LONGEST_S;
  }

  List<LineEvent.Chunk> chunks() {
    return List.copyOf(chunks);
  }

  void forget() {
    chunks.clear();
    bytes = Bytes.EMPTY;
  }

  LessonEvent.Arrived arrived() {
    String text = new String(bytes.toArray(), StandardCharsets.ISO_8859_1);
    return new LessonEvent.Arrived(number, bytes.toHex(), text.replaceAll("[^ -~]", "."));
  }
}
