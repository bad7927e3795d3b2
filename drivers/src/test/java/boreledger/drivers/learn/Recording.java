package boreledger.drivers.learn;

import boreledger.drivers.learn.InventedGauge.Chunking;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** What the line of an invented gauge delivers, press by press, from a seed. */
final class Recording {
  private static final double HALF_PAUSE_S = 0.004;
  private static final double CRUMB_PAUSE_S = 0.001;
  private static final double REPEAT_PAUSE_S = 0.25;

  private final InventedGauge gauge;
  private final Random random;
  private final List<LineEvent.Chunk> chunks = new ArrayList<>();
  private double tS;
  private int sequence;

  Recording(InventedGauge gauge, long seed) {
    this.gauge = gauge;
    random = new Random(seed);
    sequence = random.nextInt(180);
  }

  /** One or several equal frames of a reading. */
  void press(Reading reading, int frames) {
    tS += 0.6 + 2 * random.nextDouble();
    for (int i = 0; i < frames; i++) {
      tS += REPEAT_PAUSE_S;
      byte[] frame = gauge.wire().frame(reading.sent(sequence++, random.nextInt(256)));
      deliver(chunks.isEmpty() && gauge.joinedLate() ? tail(frame) : frame);
      if (chunks.size() == 1 && gauge.joinedLate()) {
        i--;
        tS += REPEAT_PAUSE_S;
      }
    }
  }

  List<LineEvent.Chunk> chunks() {
    return List.copyOf(chunks);
  }

  private static byte[] tail(byte[] frame) {
    return Arrays.copyOfRange(frame, frame.length - 3, frame.length);
  }

  private void deliver(byte[] frame) {
    Bytes bytes = Bytes.of(frame);
    boolean whole = gauge.chunks() == Chunking.WHOLE || chunks.isEmpty() && gauge.joinedLate();
    if (whole) {
      add(bytes);
    } else if (gauge.chunks() == Chunking.HALVES) {
      int cut = 1 + random.nextInt(bytes.size() - 1);
      add(bytes.slice(0, cut));
      tS += HALF_PAUSE_S;
      add(bytes.slice(cut, bytes.size()));
    } else {
      crumbs(bytes);
    }
  }

  private void crumbs(Bytes bytes) {
    int from = 0;
    while (from < bytes.size()) {
      int to = Math.min(bytes.size(), from + 1 + random.nextInt(3));
      add(bytes.slice(from, to));
      tS += CRUMB_PAUSE_S;
      from = to;
    }
  }

  private void add(Bytes bytes) {
    chunks.add(new LineEvent.Chunk(Math.rint(tS * 1000) / 1000, bytes));
  }
}
