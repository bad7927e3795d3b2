package boreledger.drivers.learn;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.Line;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.line.LineFault;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Listens to a line, press by press. */
final class Presses {
  private static final Duration QUIET = Duration.ofMillis(500);
  private static final double LONGEST_S = 3;

  private final Duration patience;
  private final List<LineEvent.Chunk> heard = new ArrayList<>();

  /**
   * @param patience how long a press is waited for
   */
  Presses(Duration patience) {
    this.patience = patience;
  }

  /**
   * Waits for bytes, and then for the line to fall quiet.
   *
   * @return what came; empty when nothing did
   */
  Bytes next(Line line) throws LineFault {
    Bytes press = Bytes.EMPTY;
    double firstTS = Double.POSITIVE_INFINITY;
    LineEvent event = line.read(patience);
    while (event instanceof LineEvent.Chunk chunk && chunk.tS() - firstTS < LONGEST_S) {
      firstTS = Math.min(firstTS, chunk.tS());
      heard.add(chunk);
      press = press.plus(chunk.bytes());
      event = line.read(QUIET);
    }
    return press;
  }

  /** Everything heard so far, as if seven data bits had been asked for where it is said so. */
  List<LineEvent.Chunk> heard(int dataBits) {
    return withBits(heard, dataBits);
  }

  /** What was heard with eight data bits, as if fewer had been asked for. */
  static List<LineEvent.Chunk> withBits(List<LineEvent.Chunk> chunks, int dataBits) {
    int mask = (1 << dataBits) - 1;
    return chunks.stream().map(chunk -> masked(chunk, mask)).toList();
  }

  private static LineEvent.Chunk masked(LineEvent.Chunk chunk, int mask) {
    byte[] bytes = chunk.bytes().toArray();
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] &= (byte) mask;
    }
    return new LineEvent.Chunk(chunk.tS(), Bytes.of(bytes));
  }
}
