package boreledger.drivers.decoder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import boreledger.drivers.framer.FrameEvent;
import boreledger.drivers.framer.Framers;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.GaugeProfiles;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The built-in profiles, from bytes to values. */
class BuiltInProfileTest {
  private static Decoded decode(String profileName, String line) throws Exception {
    GaugeProfile profile = GaugeProfiles.find(profileName, List.of());
    Bytes bytes = Bytes.of(line.getBytes(StandardCharsets.US_ASCII));
    List<FrameEvent> frames = Framers.of(profile.frame()).feed(new LineEvent.Chunk(0, bytes));
    assertEquals(1, frames.size());
    return Decoders.of(profile).decode(assertInstanceOf(FrameEvent.Frame.class, frames.get(0)));
  }

  /** NR1, NR2 and NR3 responses: IEEE 488.2, 8.7.2, 8.7.3 and 8.7.4. */
  @ParameterizedTest
  @CsvSource({
    "42, 42",
    "42.69, 42.69",
    "-5.123456789, -5.123456789",
    "1.0005E+3, 1000.5",
    "-99.123E-1, -9.9123"
  })
  void ieee488ResponsesAreRead(String text, double expectedMm) throws Exception {
    Sample sample = assertInstanceOf(Sample.class, decode("ieee-488-2-size", text + "\n"));
    assertEquals(expectedMm, sample.valueMm());
  }

  @ParameterizedTest
  @ValueSource(strings = {".42", "42.", "1.0E3", "", "1V"})
  void anythingElseIsNoIeee488Response(String text) throws Exception {
    assertInstanceOf(Rejected.class, decode("ieee-488-2-size", text + "\n"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"ascii-line-deviation", "ascii-line-size"})
  void asciiLinesAreReadWithEitherLineEnd(String profile) throws Exception {
    for (String text : List.of("+0.0127\n", " + 0,0127 mm\r\n", "0.0005 in\r\n", "0.0127\r\n")) {
      Sample sample = assertInstanceOf(Sample.class, decode(profile, text), text);
      assertEquals(0.0127, sample.valueMm(), text);
    }
  }

  @Test
  void keyboardLinesAreReadWithAndWithoutALineFeed() throws Exception {
    for (String text : List.of("12.34\r", "\n12,34 mm\r")) {
      Sample sample = assertInstanceOf(Sample.class, decode("keyboard-line-size", text), text);
      assertEquals(12.34, sample.valueMm(), text);
    }
  }

  /** The response to the profile's own request, registers 0001 and 86a0: 100000 steps of 1 um. */
  @Test
  void modbusRegistersAreRead() throws Exception {
    GaugeProfile profile = GaugeProfiles.find("modbus-rtu-size", List.of());
    // A public vector: slave 1, function 3, registers 0 and 1.
    assertEquals("010300000002c40b", profile.ask().request().toHex());
    Sample sample = assertInstanceOf(Sample.class, Gauges.decode(profile, "010304000186a03ace"));
    assertEquals(100.0, sample.valueMm());
  }
}
