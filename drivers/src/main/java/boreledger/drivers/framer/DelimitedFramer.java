package boreledger.drivers.framer;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.FrameSpec;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts frames that end with given bytes.
 *
 * <pre>
 * ends_with = "\r\n", max_bytes = 8
 *
 *   2b 30 2e 31 0d 0a | 0d 0a | 31 32 33 34 35 36 37 38 | 39 0d 0a  | 2d 31
 *   frame "+0.1"      | frame | damage: longer than 8   | damage:   | damage: ended
 *                     | ""    |                         | discarded | without ending
 * </pre>
 *
 * <ul>
 *   <li>The ending may come in parts; {@code \r\r\n} ends a frame whose last byte is {@code \r}.
 *   <li>An ending without bytes before it is an empty frame.
 *   <li>A frame longer than the maximum is damage: its bytes come in pieces of at most the maximum,
 *       up to and including the next ending, after which frames are cut again.
 *   <li>The end of the stream makes damage of what has no ending.
 * </ul>
 */
final class DelimitedFramer implements Framer {
  private final Bytes ending;
  private final EndingMatch match;
  private final byte[] pending;
  private int size;
  private double lastS;
  private boolean tooLong;

  DelimitedFramer(FrameSpec.Delimited spec) {
    ending = spec.endsWith();
    match = new EndingMatch(ending);
    pending = new byte[spec.maxBytes()];
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
    if (event instanceof LineEvent.End) {
      finish(events);
    }
    return events;
  }

  private void take(byte next, List<FrameEvent> events) {
    pending[size++] = next;
    if (match.endsWith(next)) {
      events.add(tooLong ? rest() : frame());
      tooLong = false;
    } else if (size == pending.length) {
      events.add(tooLong ? rest() : overflow());
      tooLong = true;
    }
  }

  private void finish(List<FrameEvent> events) {
    if (size > 0) {
      events.add(
          tooLong ? rest() : new FrameEvent.Damage(lastS, flush(), "ended without its ending"));
    }
    tooLong = false;
    match.restart();
  }

  private FrameEvent frame() {
    Bytes raw = flush();
    return new FrameEvent.Frame(lastS, raw, raw.slice(0, raw.size() - ending.size()));
  }

  private FrameEvent overflow() {
    String why = "longer than " + pending.length + " bytes without an ending";
    return new FrameEvent.Damage(lastS, flush(), why);
  }

  private FrameEvent rest() {
    return new FrameEvent.Damage(lastS, flush(), "discarded until the next ending");
  }

  private Bytes flush() {
    Bytes raw = Bytes.of(pending, 0, size);
    size = 0;
    return raw;
  }
}
