package boreledger.drivers.framer;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.FrameSpec;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts frames where the line falls silent.
 *
 * <pre>
 * quiet_ms = 20, max_bytes = 4
 *
 *   1.000 s  31 32   \\ frame "1234"
 *   1.004 s  33 34   /
 *   1.024 s  35      - frame "5"
 *   1.500 s  36 36 36 36 36  damage: longer than 4 bytes
 * </pre>
 *
 * <ul>
 *   <li>The silence is that between two chunks, or between the last chunk and the line being said
 *       to be quiet. A chunk's time is when it was read, so {@code quiet_ms} has to be longer than
 *       a frame's pieces take to arrive, and shorter than the gauge's pause.
 *   <li>Chunks less than {@code quiet_ms} apart are of one frame, however the bytes are shared out
 *       between them.
 *   <li>A frame longer than the maximum is damage, up to the next silence; beyond {@value
 *       #MOST_DAMAGE} bytes it comes in pieces.
 *   <li>An orderly end of the stream is silence too. If the line broke, what was being said may be
 *       half a frame and is damage.
 * </ul>
 */
final class SilenceFramer implements Framer {
  static final int MOST_DAMAGE = 16_384;
  // Times are doubles: 1.024 - 1.004 is below 0.02.
  private static final double ROUNDING_S = 1e-9;

  private final double quietS;
  private final int maxBytes;
  private final ByteArrayOutputStream pending = new ByteArrayOutputStream();
  private double lastS;
  private boolean discarding;

  SilenceFramer(FrameSpec.Silence spec) {
    quietS = spec.quietMs() / 1000;
    maxBytes = spec.maxBytes();
  }

  @Override
  public List<FrameEvent> feed(LineEvent event) {
    List<FrameEvent> events = new ArrayList<>();
    if (event.tS() - lastS >= quietS - ROUNDING_S) {
      finish(events);
    }
    if (event instanceof LineEvent.Chunk chunk && chunk.bytes().size() > 0) {
      take(chunk, events);
    }
    if (event instanceof LineEvent.Cut && pending.size() > 0) {
      events.add(damage("the line broke before the silence that ends a frame"));
    }
    if (event.isLast()) {
      finish(events);
    }
    return events;
  }

  private void take(LineEvent.Chunk chunk, List<FrameEvent> events) {
    lastS = chunk.tS();
    for (int from = 0; from < chunk.bytes().size(); ) {
      int to = Math.min(chunk.bytes().size(), from + most() - pending.size());
      pending.writeBytes(chunk.bytes().slice(from, to).toArray());
      from = to;
      if (pending.size() == most()) {
        events.add(tooLong());
        discarding = true;
      }
    }
  }

  /** One more than the longest frame, so that being full means being too long. */
  private int most() {
    return Math.max(MOST_DAMAGE, maxBytes + 1);
  }

  private void finish(List<FrameEvent> events) {
    if (pending.size() > 0) {
      boolean isTooLong = discarding || pending.size() > maxBytes;
      events.add(isTooLong ? tooLong() : frame());
    }
    discarding = false;
  }

  private FrameEvent frame() {
    Bytes raw = flush();
    return new FrameEvent.Frame(lastS, raw, raw);
  }

  private FrameEvent tooLong() {
    return damage(
        discarding
            ? "discarded until the next silence"
            : "longer than " + maxBytes + " bytes without a silence");
  }

  private FrameEvent damage(String why) {
    return new FrameEvent.Damage(lastS, flush(), why);
  }

  private Bytes flush() {
    Bytes raw = Bytes.of(pending.toByteArray());
    pending.reset();
    return raw;
  }
}
