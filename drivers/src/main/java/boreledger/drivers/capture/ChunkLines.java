package boreledger.drivers.capture;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The lines of a capture file after the first, whose times never run back. */
final class ChunkLines {
  static final String GONE = "gone";
  static final String BACK = "back";

  private double lastS;

  /** What the line said then; none when there is but a comment. */
  Optional<LineEvent> read(JsonLine line) throws FileProblem {
    List<String> said = Stream.of("rx", GONE, BACK).filter(line::has).toList();
    LineEvent event = null;
    if (line.has("t") || !said.isEmpty() || !line.has("comment")) {
      event = event(line, said);
    }
    line.done();
    return Optional.ofNullable(event);
  }

  private LineEvent event(JsonLine line, List<String> said) throws FileProblem {
    if (said.size() > 1) {
      throw line.problem("found " + String.join(" and ", said) + ", expected one of them");
    }
    double tS = timeS(line);
    return switch (said.isEmpty() ? "rx" : said.get(0)) {
      case GONE -> new LineEvent.Gone(tS, line.string(GONE));
      case BACK -> new LineEvent.Back(tS, line.string(BACK));
      default -> new LineEvent.Chunk(tS, bytes(line));
    };
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
