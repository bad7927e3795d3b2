package boreledger.drivers.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import boreledger.drivers.Problem;
import boreledger.drivers.line.Bytes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each refusal's whole message, for gauges that speak in bytes. {@code ~} stands for a new line.
 */
class BinaryProfileRefusalTest {
  private static final String BYTES =
      """
      format = "boreledger-gauge/1"
      name = "Bytes"
      reads = "size"
      unit = "mm"
      resolution_mm = 0.001
      max_error_mm = 0.002
      [frame]
      kind = "fixed"
      bytes = 8
      [decode]
      kind = "integer"
      at = 1
      bytes = 3
      byte_order = "big"
      scale = 0.001
      [flags]
      hold = { at = 4, mask = 1 }
      [[check]]
      kind = "crc"
      from = 0
      to = -2
      at = -2
      width = 16
      polynomial = 0x8005
      init = 0xFFFF
      reflect_in = true
      reflect_out = true
      xor_out = 0
      byte_order = "little"
      [ask]
      send = "M\\r"
      every_ms = 100
      [pick]
      rule = "press"
      """;

  private static final String MODBUS =
      """
      format = "boreledger-gauge/1"
      name = "Registers"
      reads = "size"
      unit = "mm"
      resolution_mm = 0.001
      max_error_mm = 0.002
      [frame]
      kind = "modbus-rtu"
      [decode]
      kind = "modbus-registers"
      slave = 17
      function = 4
      register = 8
      registers = 2
      type = "integer"
      scale = 0.001
      [ask]
      every_ms = 100
      [pick]
      rule = "press"
      """;

  private static String refusal(String text, String oldLine, String newLine) {
    if (!text.contains(oldLine + "\n")) {
      throw new IllegalArgumentException("no line " + oldLine);
    }
    String changed = text.replace(oldLine + "\n", newLine.replace('~', '\n') + "\n");
    return Problem.of(() -> ProfileSample.parse(changed)).replaceFirst("^g:", "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          kind = "integer"     | kind = "roman"           | 11:8: kind is "roman", expected one of "pattern", "ieee-488.2", "integer", "float", "packed-digits", "modbus-registers"
          kind = "integer"     | kind = "integer"~pattern = 'x' | 12:1: unknown key pattern in [decode], expected one of kind, bytes, at, byte_order, negative, decimal_position, signed, scale, inch_scale, inch, millimetre
          kind = "integer"     | kind = "float"           | 13:9: bytes is 3, expected 4 or 8
          kind = "integer"     | kind = "packed-digits"~signed = true | 12:1: unknown key signed in [decode], expected one of kind, bytes, at, byte_order, negative, decimal_position, nibble_order, scale, inch_scale, inch, millimetre
          kind = "integer"     | kind = "modbus-registers" | 11:8: modbus-registers want [frame] kind = "modbus-rtu"
          kind = "integer"     | kind = "ieee-488.2"      | 12:1: unknown key at in [decode], expected one of kind, scale
          at = 1               | at = 6                   | 12:6: at is 6, expected a place with room for 3 bytes, it has 2
          at = 1               | at = -2                  | 12:6: at is -2, expected a place with room for 3 bytes, it has 2
          at = 1               | at = 8                   | 12:6: at is 8, expected a whole number from -8 to 7
          bytes = 3            | bytes = 9                | 13:9: bytes is 9, expected a whole number from 1 to 8
          scale = 0.001        | scale = 0                | 15:9: scale is 0, expected a number other than 0
          scale = 0.001        | scale = "1"              | 15:9: scale is "1", expected a number
          scale = 0.001        | scale = nan              | 15:9: scale is NaN, expected a number
          scale = 0.001        | # no scale               | 10:1: missing scale in [decode], which is required
          scale = 0.001        | scale = 1~decimal_position = { at = 0, mask = 15 } | 15:9: both scale and decimal_position, expected one of them
          scale = 0.001        | decimal_position = { at = 0, mask = 5 } | 15:37: mask is 5, expected bits side by side, such as 0x0F
          scale = 0.001        | scale = 1~signed = true~negative = { at = 0, mask = 1 } | 16:10: signed is true, expected false: negative already says the sign
          scale = 0.001        | scale = 1~negative = { at = 0, mask = 256 } | 16:29: mask is 256, expected a whole number from 1 to 255
          scale = 0.001        | scale = 1~negative = { at = 0, mask = 1, equals = 2 } | 16:41: equals is 2, expected no bits outside the mask 1
          scale = 0.001        | scale = 1~negative = { at = 0, bit = 1 } | 16:12: missing mask in [negative], which is required
          scale = 0.001        | scale = 1~inch = { at = 8, mask = 1 } | 16:15: at is 8, expected a whole number from -8 to 7
          """)
  void decode(String oldLine, String newLine, String expected) {
    assertEquals(expected, refusal(BYTES, oldLine, newLine));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          hold = { at = 4, mask = 1 } | held = { at = 4, mask = 1 } | 17:1: unknown key held in [flags], did you mean hold?
          hold = { at = 4, mask = 1 } | hold = true | 17:8: hold is true, expected a table [hold]
          hold = { at = 4, mask = 1 } | hold = { at = 4, mask = 1, is = 1 } | 17:28: unknown key is in [hold], did you mean at?
          kind = "crc"  | kind = "md5" | 19:8: kind is "md5", expected one of "sum8", "xor8", "crc"
          kind = "crc"  | kind = "sum8" | 23:1: unknown key width in [[check]], expected one of kind, as, from, to, at
          from = 0      | from = 9 | 20:8: from is 9, expected a whole number from -8 to 8
          from = 0      | from = -2 | 21:6: to is -2, expected more than from, which is -2
          at = -2       | at = -1 | 22:6: at is -1, expected a place with room for 2 bytes, it has 1
          at = -2       | at = -2~as = "hex-text" | 22:6: at is -2, expected a place with room for 4 bytes, it has 2
          at = -2       | at = -2~as = "hex" | 23:6: as is "hex", expected one of "bytes", "hex-text"
          width = 16    | width = 33 | 23:9: width is 33, expected a whole number from 8 to 32
          init = 0xFFFF | init = 0x10000 | 25:8: init is 65536, expected a whole number from 0 to 65535
          xor_out = 0   | xor_out = -1 | 28:11: xor_out is -1, expected a whole number from 0 to 65535
          reflect_in = true | reflect = true | 18:1: missing reflect_in in [[check]], which is required; line 26 has reflect
          byte_order = "little" | # none | 18:1: missing byte_order in [[check]], which is required
          send = "M\\r"  | # nothing | 30:1: missing send in [ask], which is required
          send = "M\\r"  | send = "M"~send_hex = "4d" | 32:12: both send and send_hex, expected one of them
          every_ms = 100 | every_ms = 0 | 32:12: every_ms is 0, expected a number from 1.0 to 3600000.0
          every_ms = 100 | every_ms = 100~on = "trigger" | 32:12: both every_ms and on, expected one of them
          every_ms = 100 | on = "demand" | 32:6: on is "demand", expected one of "trigger"
          every_ms = 100 | # never | 30:1: missing every_ms in [ask], which is required
          """)
  void flagsChecksAndAsking(String oldLine, String newLine, String expected) {
    assertEquals(expected, refusal(BYTES, oldLine, newLine));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          slave = 17       | slave = 0       | 11:9: slave is 0, expected a whole number from 1 to 247
          function = 4     | function = 6    | 12:12: function is 6, expected a whole number from 3 to 4
          register = 8     | register = 65536 | 13:12: register is 65536, expected a whole number from 0 to 65535
          register = 8     | register = 65535 | 13:12: register is 65535, expected one with room for 2
          registers = 2    | registers = 3   | 14:13: registers is 3, expected 1, 2 or 4
          registers = 2    | registers = 5   | 14:13: registers is 5, expected a whole number from 1 to 4
          type = "integer" | type = "word"   | 15:8: type is "word", expected one of "float", "integer", "packed-digits"
          registers = 2    | registers = 1   | ok
          scale = 0.001    | scale = 0.001~word_order = "middle" | 17:14: word_order is "middle", expected one of "big", "little"
          """)
  void registers(String oldLine, String newLine, String expected) throws Exception {
    if (expected.equals("ok")) {
      ProfileSample.parse(MODBUS.replace(oldLine, newLine));
      return;
    }
    assertEquals(expected, refusal(MODBUS, oldLine, newLine));
  }

  @Test
  void floatWantsTwoRegisters() {
    String one = MODBUS.replace("registers = 2", "registers = 1");
    assertEquals(
        "14:13: registers is 1, expected 2 or 4 for a float",
        refusal(one, "type = \"integer\"", "type = \"float\""));
  }

  @Test
  void unitBitMayStandInOneTableOnly() {
    String decode = BYTES.replace("scale = 0.001", "scale = 0.001\ninch = { at = 5, mask = 1 }");
    assertEquals(
        "18:8: inch stands in [decode] and in [flags]",
        refusal(decode, "hold = { at = 4, mask = 1 }", "inch = { at = 4, mask = 1 }"));
  }

  @Test
  void completeProfilesAreRead() throws Exception {
    GaugeProfile bytes = ProfileSample.parse(BYTES);
    assertEquals(new AskSpec(Bytes.ofHex("4d0d"), 100.0, 1000, 0), bytes.ask());
    assertEquals(1, bytes.checks().size());
    assertEquals(Crc.MODBUS, ((CheckSpec.Cyclic) bytes.checks().get(0).sum()).crc());
    GaugeProfile registers = ProfileSample.parse(MODBUS);
    // 3.5 characters of 11 bits at 9600 bit/s: MODBUS over serial line V1.02, 2.5.1.1.
    assertEquals(4.010417, registers.ask().pauseMs(), 1e-6);
    assertEquals("110400080002f299", registers.ask().request().toHex());
  }

  @Test
  void checkOfOneByteNeedsNoByteOrder() throws Exception {
    String one =
        BYTES
            .replace("byte_order = \"little\"\n", "")
            .replace("width = 16", "width = 8")
            .replace("polynomial = 0x8005", "polynomial = 0x07")
            .replace("init = 0xFFFF", "init = 0");
    assertEquals(1, ProfileSample.parse(one).checks().get(0).bytesInFrame());
  }

  @Test
  void triggeredGaugeIsNotAskedByTheClock() throws Exception {
    AskSpec ask = ProfileSample.parse(BYTES.replace("every_ms = 100", "on = \"trigger\"")).ask();
    assertNull(ask.everyMs());
  }

  @Test
  void requestMayBeGivenInHexAndOverruleTheRegisters() throws Exception {
    String own = MODBUS.replace("every_ms = 100", "every_ms = 100\nsend_hex = '0104'");
    assertEquals("0104", ProfileSample.parse(own).ask().request().toHex());
  }
}
