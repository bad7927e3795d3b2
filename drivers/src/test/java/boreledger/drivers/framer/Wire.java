package boreledger.drivers.framer;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Bytes on their way into a framer, and what came out. */
final class Wire {
  private Wire() {}

  static Bytes ascii(String text) {
    return Bytes.of(text.getBytes(StandardCharsets.ISO_8859_1));
  }

  static Bytes join(List<Bytes> parts) {
    return parts.stream().reduce(Bytes.EMPTY, Bytes::plus);
  }

  /** Feeds the parts as chunks at 0, 1, 2... seconds, then the end. */
  static List<FrameEvent> feed(Framer framer, List<Bytes> parts) {
    List<FrameEvent> events = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      events.addAll(framer.feed(new LineEvent.Chunk(i, parts.get(i))));
    }
    events.addAll(framer.feed(new LineEvent.End(parts.size())));
    return events;
  }

  static List<Bytes> byteByByte(Bytes bytes) {
    List<Bytes> parts = new ArrayList<>();
    for (int i = 0; i < bytes.size(); i++) {
      parts.add(bytes.slice(i, i + 1));
    }
    return parts;
  }

  /** The events without their times: {@code frame} or the damage's reason, with the raw bytes. */
  static List<String> timeless(List<FrameEvent> events) {
    return events.stream().map(Wire::timeless).toList();
  }

  private static String timeless(FrameEvent event) {
    String what = event instanceof FrameEvent.Damage damage ? damage.why() : "frame";
    return what + ": " + event.raw();
  }

  static List<Bytes> frames(List<FrameEvent> events) {
    return events.stream().filter(FrameEvent.Frame.class::isInstance).map(FrameEvent::raw).toList();
  }

  static Bytes raw(List<FrameEvent> events) {
    return join(events.stream().map(FrameEvent::raw).toList());
  }
}
