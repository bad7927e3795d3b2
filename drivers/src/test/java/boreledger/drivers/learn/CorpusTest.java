package boreledger.drivers.learn;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The corpus holds what it says it holds. */
class CorpusTest {
  private static final long SEED = 4711;

  static Stream<InventedGauge> knowable() {
    return Corpus.knowable().stream();
  }

  static Stream<InventedGauge> every() {
    return Stream.concat(knowable(), Corpus.unknowable().stream());
  }

  private static Reading at(InventedGauge gauge, String mm) {
    return gauge.set(new BigDecimal(mm), LengthUnit.MM);
  }

  @Test
  void fortyGaugesOrMoreBearDifferentNames() {
    Set<String> names = new HashSet<>();
    every().forEach(gauge -> assertTrue(names.add(gauge.name()), gauge.name()));
    assertTrue(Corpus.knowable().size() >= 40, () -> "only " + Corpus.knowable().size());
    assertTrue(Corpus.unknowable().size() >= 8);
  }

  @ParameterizedTest
  @MethodSource("knowable")
  void differentValuesGiveDifferentFrames(InventedGauge gauge) {
    Set<String> frames = new HashSet<>();
    List<String> shown = List.of("0", "1", "2.345", "5", "12.7");
    shown.forEach(mm -> frames.add(HexFormat.of().formatHex(gauge.wire().frame(at(gauge, mm)))));
    assertEquals(shown.size(), frames.size());
  }

  @ParameterizedTest
  @MethodSource("knowable")
  void signAndUnitReachTheLine(InventedGauge gauge) {
    if (gauge.leastMm().signum() < 0) {
      assertNotEquals(frame(gauge, at(gauge, "-2.345")), frame(gauge, at(gauge, "2.345")));
    }
    if (gauge.stepIn() != null) {
      BigDecimal half = new BigDecimal("12.7");
      Reading inch = gauge.set(half, LengthUnit.IN);
      assertEquals(12.7, inch.valueMm());
      assertNotEquals(frame(gauge, inch), frame(gauge, gauge.set(half, LengthUnit.MM)));
    }
  }

  private static Bytes frame(InventedGauge gauge, Reading reading) {
    return Bytes.of(gauge.wire().frame(reading));
  }

  @ParameterizedTest
  @MethodSource("every")
  void theLineDeliversTheFramesInOrder(InventedGauge gauge) {
    Recording recording = new Recording(gauge, SEED);
    recording.press(at(gauge, "1"), 2);
    recording.press(at(gauge, "5"), 1);
    Bytes heard = Bytes.EMPTY;
    double lastS = 0;
    for (LineEvent.Chunk chunk : recording.chunks()) {
      assertTrue(chunk.tS() >= lastS, () -> chunk + " runs back in time");
      lastS = chunk.tS();
      heard = heard.plus(chunk.bytes());
    }
    assertFalse(recording.chunks().isEmpty());
    int least = 3 * gauge.wire().frame(at(gauge, "1")).length / 2;
    assertTrue(heard.size() > least, heard::toString);
  }

  /** Example of the Modbus serial line implementation guide V1.02, 6.2.2: 02 07 gives 12 41. */
  @Test
  void theModbusCheckIsThatOfItsGuide() {
    assertEquals(0x1241, Crc.MODBUS.of(new byte[] {2, 7}));
  }

  /** Check values as catalogues of CRCs commonly list them (from memory). */
  @Test
  void theOtherChecksGiveTheirCheckValues() {
    byte[] digits = "123456789".getBytes(StandardCharsets.US_ASCII);
    assertEquals(0x29b1, Crc.CCITT.of(digits));
    assertEquals(0xf4, Crc.EIGHT.of(digits));
    assertEquals(0x4b37, Crc.MODBUS.of(digits));
  }

  @Test
  void packedDigitsAreDecimal() {
    assertEquals(0x12345, Layout.packed(12_345));
    assertEquals(0x103254, Layout.nibblesSwapped(0x012345));
    assertArrayEquals(
        new byte[] {0x45, 0x23, 0x01}, new Layout().little(Layout.packed(12_345), 3).frame());
  }

  @Test
  void anOddStepIsShownAsTheDisplayRoundsIt() {
    InventedGauge gauge = InventedGauge.of("odd", "0.00127", r -> new byte[0]);
    assertEquals(new BigDecimal("0.99949"), at(gauge, "1").number());
    InventedGauge binary = InventedGauge.of("odd", "0.00390625", r -> new byte[0]);
    assertEquals(new BigDecimal("-2.344"), InventedGauge.displayedMm(at(binary, "-2.345")));
  }
}
