package boreledger.drivers.capture;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import java.util.Optional;

/** The lines of a capture file after the first, whose times never run back. */
final class ChunkLines {
  private double lastS;

  /** The line's chunk; none when it holds but a comment. */
  Optional<LineEvent.Chunk> read(JsonLine line) throws FileProblem {
    boolean onlyComment = line.has("comment") && !line.has("t") && !line.has("rx");
    LineEvent.Chunk chunk = onlyComment ? null : new LineEvent.Chunk(timeS(line), bytes(line));
    line.done();
    return Optional.ofNullable(chunk);
  }

  private double timeS(JsonLine line) throws FileProblem {
    double foundS = line.number("t");
    if (foundS < 0) {
      throw line.expected("t", "seconds since the start, 0 or more");
    }
    if (foundS < lastS) {
      throw line.expected("t", "no less than the " + lastS + " before: time runs back");
    }
    lastS = foundS;
    return foundS;
  }

  private static Bytes bytes(JsonLine line) throws FileProblem {
    String hex = line.string("rx");
    if (hex.length() % 2 != 0) {
      throw line.problem("rx has " + hex.length() + " hexadecimal digits, expected pairs");
    }
    try {
      return Bytes.ofHex(hex);
    } catch (IllegalArgumentException e) {
      throw line.expected("rx", "hexadecimal digits");
    }
  }
}
