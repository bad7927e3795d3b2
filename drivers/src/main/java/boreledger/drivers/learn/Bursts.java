package boreledger.drivers.learn;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a line sent between pauses.
 *
 * @param quietMs a pause that lies between those within a burst and those between bursts; 0 when
 *     the line never paused
 */
record Bursts(List<Bytes> bytes, double quietMs) {
  private static final double SHORTEST_PAUSE_MS = 20;
  private static final double LONGEST_QUIET_MS = 100;

  /** The bursts of what was heard, in order. */
  static Bursts of(List<LineEvent.Chunk> chunks) {
    double pauseMs = pauseMs(chunks);
    List<Bytes> bursts = new ArrayList<>();
    Bytes burst = Bytes.EMPTY;
    for (int i = 0; i < chunks.size(); i++) {
      if (i > 0 && gapMs(chunks, i) >= pauseMs) {
        bursts.add(burst);
        burst = Bytes.EMPTY;
      }
      burst = burst.plus(chunks.get(i).bytes());
    }
    bursts.add(burst);
    double quietMs = bursts.size() > 1 ? quietMs(chunks, pauseMs) : 0;
    return new Bursts(bursts, quietMs);
  }

  /** The shortest pause between bursts: above it the pauses are several times as long as below. */
  private static double pauseMs(List<LineEvent.Chunk> chunks) {
    double[] gapsMs = new double[Math.max(0, chunks.size() - 1)];
    for (int i = 1; i < chunks.size(); i++) {
      gapsMs[i - 1] = gapMs(chunks, i);
    }
    Arrays.sort(gapsMs);
    double belowMs = 0;
    for (double gapMs : gapsMs) {
      if (gapMs >= SHORTEST_PAUSE_MS && gapMs >= 3 * belowMs) {
        return gapMs;
      }
      belowMs = gapMs;
    }
    return Double.POSITIVE_INFINITY;
  }

  private static double quietMs(List<LineEvent.Chunk> chunks, double pauseMs) {
    double withinMs = 0;
    for (int i = 1; i < chunks.size(); i++) {
      double gapMs = gapMs(chunks, i);
      withinMs = gapMs < pauseMs ? Math.max(withinMs, gapMs) : withinMs;
    }
    return Math.rint(Math.min(LONGEST_QUIET_MS, (withinMs + pauseMs) / 2));
  }

  private static double gapMs(List<LineEvent.Chunk> chunks, int index) {
    return 1000 * (chunks.get(index).tS() - chunks.get(index - 1).tS());
  }
}
