package boreledger.drivers.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.profile.FrameSpec;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every kind of frame with every kind of decoding behind it: wherever the bytes are cut, and
 * whatever junk stands between messages, the readings are the same and every byte is accounted for
 * once.
 *
 * <p>Messages come one second apart. A frame that ends in silence must keep its moment, so its
 * bytes are cut but not moved; the others may even arrive all at once.
 */
class EveryGaugeContractTest {
  private static final String FRAME_LINE =
      "[frame]\nkind='line'\nends_with=\"\\r\\n\"\nmax_bytes=16\n";
  private static final String FRAME_SILENCE =
      "[frame]\nkind='silence'\nquiet_ms=50\nmax_bytes=16\n";
  private static final String FRAME_MODBUS = "[frame]\nkind='modbus-rtu'\n";
  private static final String PATTERN = "[decode]\npattern='^(?<value>[+-]\\d+\\.\\d+)\\s*$'\n";
  private static final String IEEE = "[decode]\nkind='ieee-488.2'\nscale=0.5\n";
  private static final String SUM = "[[check]]\nkind='sum8'\nfrom=0\nto=-1\nat=-1\n";
  private static final String FLOAT = "[decode]\nkind='float'\nat=1\nbytes=4\nbyte_order='big'\n";
  private static final String INTEGER =
      "[decode]\nkind='integer'\nat=1\nbytes=3\nbyte_order='big'\nscale=0.001\n"
          + "negative={at=1,mask=0x80}\ninch={at=4,mask=0x01}\n";
  private static final String DIGITS =
      "[decode]\nkind='packed-digits'\nat=1\nbytes=3\nbyte_order='little'\n"
          + "decimal_position={at=4,mask=0x0F}\n";
  private static final String REGISTERS =
      "[decode]\nkind='modbus-registers'\nslave=17\nfunction=4\nregister=8\nregisters=1\n"
          + "type='integer'\nscale=0.001\n";

  /**
   * A gauge.
   *
   * @param messages what it sends, in hex, and each message's value in millimetres
   * @param junk what may stand between messages, itself no part of one
   */
  record Case(
      String name, String tables, List<String> messages, List<Double> valuesMm, List<String> junk) {
    GaugeProfile profile() throws FileProblem {
      String head =
          "format='boreledger-gauge/1'\nname='g'\nreads='size'\nunit='mm'\n"
              + "resolution_mm=0.001\nmax_error_mm=0.002\n";
      return GaugeProfiles.parse("g", head + tables + "[pick]\nrule='press'\n");
    }

    @Override
    public String toString() {
      return name;
    }
  }

  private static String fixed(int bytes) {
    return "[frame]\nkind='fixed'\nbytes=" + bytes + "\nstarts_with_hex='02'\nends_with_hex='0d'\n";
  }

  static Stream<Case> gauges() {
    List<String> lines = List.of("2b312e350d0a", "2d302e30310d0a");
    List<Double> lineMm = List.of(1.5, -0.01);
    List<String> lineJunk = List.of("00ff0d0a", "0d0a", "78".repeat(40) + "0d0a");
    List<String> loose = List.of("00ff", "78".repeat(40));
    List<String> floats = List.of("02414800000d", "02bfc000000d");
    List<String> ints = List.of("02803039000d", "02000001010d");
    List<String> digits = List.of("02452301030d", "02000010020d");
    return Stream.of(
        new Case("line, pattern", FRAME_LINE + PATTERN, lines, lineMm, lineJunk),
        new Case("line, IEEE 488.2", FRAME_LINE + IEEE, lines, List.of(0.75, -0.005), lineJunk),
        new Case("fixed, float", fixed(6) + FLOAT, floats, List.of(12.5, -1.5), loose),
        new Case("fixed, integer", fixed(6) + INTEGER, ints, List.of(-12.345, 0.0254), loose),
        new Case("fixed, packed digits", fixed(6) + DIGITS, digits, List.of(12.345, 1000.0), loose),
        new Case(
            "fixed, pattern", fixed(6) + PATTERN, List.of("022b312e350d"), List.of(1.5), loose),
        new Case("silence, pattern", FRAME_SILENCE + PATTERN, lines, lineMm, loose),
        new Case("silence, float", FRAME_SILENCE + FLOAT, floats, List.of(12.5, -1.5), loose),
        new Case(
            "silence, integer", FRAME_SILENCE + INTEGER, ints, List.of(-12.345, 0.0254), loose),
        new Case(
            "silence, packed digits",
            FRAME_SILENCE + DIGITS,
            digits,
            List.of(12.345, 1000.0),
            List.of("ff", "78".repeat(40))),
        new Case(
            "silence, integer with a check",
            FRAME_SILENCE + INTEGER + SUM,
            List.of("020000010003", "020000020105"),
            List.of(0.001, 0.0508),
            List.of("020000010004", "ff", "78".repeat(40))),
        new Case(
            "modbus-rtu, registers",
            FRAME_MODBUS + REGISTERS,
            List.of("110402000af8f4"),
            List.of(0.010),
            List.of("00", "1104", "ffffff", "118102c054", "110400080001b298")),
        new Case(
            "modbus-rtu, integer in bytes",
            FRAME_MODBUS + "[decode]\nkind='integer'\nat=3\nbytes=2\nbyte_order='big'\nscale=1\n",
            List.of("110402000af8f4"),
            List.of(10.0),
            List.of("00", "1104", "ffffff")));
  }

  private static List<GaugeEvent> play(Case gauge, List<LineEvent.Chunk> line) throws Exception {
    Gauge fresh = new Gauge(gauge.profile(), null);
    List<GaugeEvent> events = new ArrayList<>();
    line.forEach(chunk -> events.addAll(fresh.feed(chunk)));
    events.addAll(fresh.feed(new LineEvent.End(line.get(line.size() - 1).tS())));
    return events;
  }

  /** Junk, message, junk, message... and junk at the end, one second apart. */
  private static List<LineEvent.Chunk> withJunk(Case gauge) {
    List<LineEvent.Chunk> line = new ArrayList<>();
    for (String junk : gauge.junk()) {
      for (String message : gauge.messages()) {
        line.add(new LineEvent.Chunk(line.size(), Bytes.ofHex(junk)));
        line.add(new LineEvent.Chunk(line.size(), Bytes.ofHex(message)));
      }
      line.add(new LineEvent.Chunk(line.size(), Bytes.ofHex(junk)));
    }
    return line;
  }

  private static List<LineEvent.Chunk> cut(List<LineEvent.Chunk> line, int at) {
    List<LineEvent.Chunk> pieces = new ArrayList<>();
    for (LineEvent.Chunk chunk : line) {
      int middle = Math.min(at, chunk.bytes().size());
      pieces.add(new LineEvent.Chunk(chunk.tS(), chunk.bytes().slice(0, middle)));
      pieces.add(
          new LineEvent.Chunk(chunk.tS(), chunk.bytes().slice(middle, chunk.bytes().size())));
    }
    return pieces;
  }

  private static List<LineEvent.Chunk> byteByByte(List<LineEvent.Chunk> line) {
    List<LineEvent.Chunk> bytes = new ArrayList<>();
    for (LineEvent.Chunk chunk : line) {
      for (int i = 0; i < chunk.bytes().size(); i++) {
        bytes.add(new LineEvent.Chunk(chunk.tS(), chunk.bytes().slice(i, i + 1)));
      }
    }
    return bytes;
  }

  private static Bytes sent(List<LineEvent.Chunk> line) {
    return line.stream().map(LineEvent.Chunk::bytes).reduce(Bytes.EMPTY, Bytes::plus);
  }

  private static Bytes accounted(List<GaugeEvent> events) {
    Bytes seen = Bytes.EMPTY;
    for (GaugeEvent event : events) {
      if (event instanceof GaugeEvent.Live live) {
        seen = seen.plus(live.sample().raw());
      } else if (event instanceof GaugeEvent.Bad bad) {
        seen = seen.plus(bad.rejected().raw());
      }
    }
    return seen;
  }

  private static List<Double> readings(List<GaugeEvent> events) {
    return events.stream()
        .filter(GaugeEvent.Picks.class::isInstance)
        .map(event -> ((PickEvent.Picked) ((GaugeEvent.Picks) event).pick()).valueMm())
        .toList();
  }

  private static List<Double> expected(Case gauge, int times) {
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < times; i++) {
      values.addAll(gauge.valuesMm());
    }
    return values;
  }

  @ParameterizedTest
  @MethodSource("gauges")
  void everyMessageIsReadAmongJunk(Case gauge) throws Exception {
    List<LineEvent.Chunk> line = withJunk(gauge);
    List<GaugeEvent> events = play(gauge, line);
    assertEquals(expected(gauge, gauge.junk().size()), readings(events));
    assertEquals(sent(line), accounted(events));
    assertTrue(events.stream().anyMatch(GaugeEvent.Bad.class::isInstance));
  }

  @ParameterizedTest
  @MethodSource("gauges")
  void cutAtAnyPositionGivesTheSameEvents(Case gauge) throws Exception {
    List<LineEvent.Chunk> line = withJunk(gauge);
    List<GaugeEvent> whole = play(gauge, line);
    for (int at = 1; at < 40; at++) {
      assertEquals(whole, play(gauge, cut(line, at)), "cut at " + at);
    }
    assertEquals(whole, play(gauge, byteByByte(line)));
  }

  @ParameterizedTest
  @MethodSource("gauges")
  void allAtOnceGivesTheSameReadings(Case gauge) throws Exception {
    if (gauge.profile().frame() instanceof FrameSpec.Silence) {
      return;
    }
    List<LineEvent.Chunk> once = List.of(new LineEvent.Chunk(0, sent(withJunk(gauge))));
    List<GaugeEvent> events = play(gauge, once);
    assertEquals(expected(gauge, gauge.junk().size()), readings(events));
    assertEquals(sent(once), accounted(events));
  }

  @ParameterizedTest
  @MethodSource("gauges")
  void quietMomentsInBetweenChangeNothing(Case gauge) throws Exception {
    List<LineEvent.Chunk> line = withJunk(gauge);
    Gauge fresh = new Gauge(gauge.profile(), null);
    List<GaugeEvent> events = new ArrayList<>();
    for (LineEvent.Chunk chunk : line) {
      events.addAll(fresh.feed(chunk));
      events.addAll(fresh.feed(new LineEvent.Quiet(chunk.tS() + 0.2)));
    }
    events.addAll(fresh.feed(new LineEvent.End(line.size() - 1)));
    assertEquals(play(gauge, line), events);
  }
}
