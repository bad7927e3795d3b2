package boreledger.drivers.framer;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.FrameSpec;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts frames of a fixed number of bytes, known by what they start and end with.
 *
 * <pre>
 * bytes = 5, starts_with_hex = "02", ends_with = "\r"
 *
 *   02 31 32 33 0d | 7f 7f      | 02 34 35 36 0d | 02 37
 *   frame "123"    | damage     | frame "456"    | damage at the end
 * </pre>
 *
 * <ul>
 *   <li>Where no frame can start, byte by byte is set aside as damage until one can. A frame that
 *       lost a byte thus spoils itself, not the next one.
 *   <li>Damage comes in pieces of at most one frame's size.
 *   <li>With neither start nor ending every run of the size is a frame, and a lost byte shifts all
 *       that follow: such gauges are not to be trusted on a poor line.
 * </ul>
 */
final class FixedFramer implements Framer {
  private final FrameSpec.Fixed spec;
  private final byte[] held;
  private final double[] arrivedS;
  private final String noFrame;
  private int junk;
  private int size;

  FixedFramer(FrameSpec.Fixed spec) {
    this.spec = spec;
    held = new byte[2 * spec.bytes()];
    arrivedS = new double[2 * spec.bytes()];
    noFrame = "no frame of " + spec.bytes() + " bytes" + marks();
  }

  @Override
  public List<FrameEvent> feed(LineEvent event) {
    List<FrameEvent> events = new ArrayList<>();
    if (event instanceof LineEvent.Chunk chunk) {
      for (int i = 0; i < chunk.bytes().size(); i++) {
        take(chunk.tS(), (byte) chunk.bytes().at(i), events);
      }
    }
    if (event.isLast()) {
      finish(events);
    }
    return events;
  }

  private void take(double tS, byte next, List<FrameEvent> events) {
    held[size] = next;
    arrivedS[size] = tS;
    size++;
    while (junk < size && !couldBeFrame()) {
      junk++;
      if (junk == spec.bytes()) {
        setAside(events);
      }
    }
    if (size - junk == spec.bytes()) {
      setAside(events);
      events.add(frame());
    }
  }

  private void finish(List<FrameEvent> events) {
    setAside(events);
    if (size > 0) {
      events.add(damage(size, "only " + size + " of " + spec.bytes() + " bytes"));
    }
  }

  private void setAside(List<FrameEvent> events) {
    if (junk > 0) {
      events.add(damage(junk, noFrame));
      junk = 0;
    }
  }

  /** Whether what is held after the junk begins, and when complete ends, like a frame. */
  private boolean couldBeFrame() {
    int length = size - junk;
    int start = Math.min(length, spec.startsWith().size());
    if (!matches(junk, spec.startsWith(), start)) {
      return false;
    }
    int end = spec.endsWith().size();
    return length < spec.bytes() || matches(size - end, spec.endsWith(), end);
  }

  private boolean matches(int from, Bytes expected, int count) {
    for (int i = 0; i < count; i++) {
      if (Byte.toUnsignedInt(held[from + i]) != expected.at(i)) {
        return false;
      }
    }
    return true;
  }

  private FrameEvent frame() {
    double tS = arrivedS[size - 1];
    Bytes raw = cut(size);
    int end = raw.size() - spec.endsWith().size();
    return new FrameEvent.Frame(tS, raw, raw.slice(spec.startsWith().size(), end));
  }

  private FrameEvent damage(int count, String why) {
    return new FrameEvent.Damage(arrivedS[count - 1], cut(count), why);
  }

  private Bytes cut(int count) {
    Bytes raw = Bytes.of(held, 0, count);
    System.arraycopy(held, count, held, 0, size - count);
    System.arraycopy(arrivedS, count, arrivedS, 0, size - count);
    size -= count;
    return raw;
  }

  private String marks() {
    String start = spec.startsWith().size() == 0 ? "" : " starting with " + spec.startsWith();
    return start + (spec.endsWith().size() == 0 ? "" : " ending with " + spec.endsWith());
  }
}
