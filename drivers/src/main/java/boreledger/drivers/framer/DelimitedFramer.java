package boreledger.drivers.framer;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.FrameSpec;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Cuts frames that end with given bytes.
 *
 * <pre>
 * ends_with = "\r\n", max_bytes = 8
 *
 *   2b 30 2e 31 0d 0a | 0d 0a | 31 32 33 34 35 36 37 38 39 0d 0a | 2d 31
 *   frame "+0.1"      | frame | damage: longer than 8 bytes      | damage: ended without
 *                     | ""    |                                  | its ending
 * </pre>
 *
 * <ul>
 *   <li>The ending may come in parts; {@code \r\r\n} ends a frame whose last byte is {@code \r}.
 *   <li>An ending without bytes before it is an empty frame.
 *   <li>A frame longer than the maximum, ending included, is damage, with all its bytes. Beyond
 *       {@value #MOST_DAMAGE} bytes the damage comes in pieces, so that a line that never sends an
 *       ending cannot fill the memory; they go on until the next ending.
 *   <li>The end of the stream makes damage of what has no ending.
 * </ul>
 */
final class DelimitedFramer implements Framer {
  static final int MOST_DAMAGE = 16_384;

  private final Bytes ending;
  private final EndingMatch match;
  private final int maxBytes;
  private byte[] pending;
  private int size;
  private double lastS;
  private boolean discarding;

  DelimitedFramer(FrameSpec.Delimited spec) {
    ending = spec.endsWith();
    match = new EndingMatch(ending);
    maxBytes = spec.maxBytes();
    pending = new byte[maxBytes];
  }

  @Override
  public List<FrameEvent> feed(LineEvent event) {
    List<FrameEvent> events = new ArrayList<>();
    if (event instanceof LineEvent.Chunk chunk) {
      for (int i = 0; i < chunk.bytes().size(); i++) {
        lastS = chunk.tS();
        take((byte) chunk.bytes().at(i), events);
      }
    }
    if (event.isLast()) {
      finish(events);
    }
    return events;
  }

  private void take(byte next, List<FrameEvent> events) {
    if (size == pending.length) {
      pending = Arrays.copyOf(pending, 2 * size);
    }
    pending[size++] = next;
    if (match.endsWith(next)) {
      events.add(isTooLong() ? tooLong() : frame());
      discarding = false;
    } else if (size >= MOST_DAMAGE && isTooLong()) {
      events.add(tooLong());
      discarding = true;
    }
  }

  private void finish(List<FrameEvent> events) {
    if (size > 0) {
      events.add(
          isTooLong()
              ? tooLong()
              : new FrameEvent.Damage(lastS, flush(), "ended without its ending"));
    }
    discarding = false;
    match.restart();
  }

  private boolean isTooLong() {
    return discarding || size > maxBytes;
  }

  private FrameEvent frame() {
    Bytes raw = flush();
    return new FrameEvent.Frame(lastS, raw, raw.slice(0, raw.size() - ending.size()));
  }

  private FrameEvent tooLong() {
    String why =
        discarding
            ? "discarded until the next ending"
            : "longer than " + maxBytes + " bytes without an ending";
    return new FrameEvent.Damage(lastS, flush(), why);
  }

  private Bytes flush() {
    Bytes raw = Bytes.of(pending, 0, size);
    if (pending.length > maxBytes) {
      pending = new byte[maxBytes];
    }
    size = 0;
    return raw;
  }
}
