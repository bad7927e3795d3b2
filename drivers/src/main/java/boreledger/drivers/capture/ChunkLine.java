package boreledger.drivers.capture;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import java.util.List;

/** Reads a capture's chunks. */
final class ChunkLine {
  private static final List<String> KEYS = List.of("t", "rx");

  private ChunkLine() {}

  static LineEvent.Chunk read(JsonLine line, double lastTS) throws FileProblem {
    line.onlyKeys(KEYS);
    double tS = line.number("t");
    if (tS < lastTS) {
      throw line.expected("t", "at least " + lastTS + ": time does not run back");
    }
    return new LineEvent.Chunk(tS, bytes(line));
  }

  private static Bytes bytes(JsonLine line) throws FileProblem {
    String hex = line.textOrEmpty("rx");
    try {
      return Bytes.ofHex(hex);
    } catch (IllegalArgumentException e) {
      throw line.expected("rx", "an even number of hexadecimal digits");
    }
  }
}
