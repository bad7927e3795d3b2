package boreledger.drivers.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.drivers.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each refusal's whole message. {@code ~} in a replacement stands for a line's end. */
class ProfileRefusalTest {
  private static String refusal(String oldLine, String newLine) {
    String text = ProfileSample.with(oldLine, newLine.replace('~', '\n'));
    return Problem.of(() -> ProfileSample.parse(text)).replaceFirst("^g:", "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          format = "boreledger-gauge/1" | format = "boreledger-gauge/2"   | 1:10: format is "boreledger-gauge/2", expected one of "boreledger-gauge/1"
          reads = "deviation"           | reads = "gap"                   | 3:9: reads is "gap", expected one of "deviation", "size"
          unit = "mm"                   | unit = "inch"                   | 4:8: unit is "inch", expected one of "in", "mm"
          resolution_mm = 0.001         | resolution_mm = 0               | 5:17: resolution_mm is 0, expected a number above 0
          resolution_mm = 0.001         | resolution_mm = "0.001"         | 5:17: resolution_mm is "0.001", expected a number above 0
          resolution_mm = 0.001         | resolution_um = 1               | 1:1: missing resolution_mm, which is required; line 5 has resolution_um
          max_error_mm = 0.002          | max_error_mm = -0.002           | 6:16: max_error_mm is -0.002, expected a number above 0
          max_error_mm = 0.002          | max_error_mm = inf              | 6:16: max_error_mm is Infinity, expected a number
          max_error_mm = 0.002          | max_error_mm = 1~max_error_include = [] | 7:1: unknown key max_error_include, did you mean max_error_includes?
          max_error_mm = 0.002          | max_error_mm = 1~max_error_includes = ["drift"] | 7:23: item 1 of max_error_includes is "drift", expected one of "repeatability", "resolution"
          max_error_mm = 0.002          | max_error_mm = 1~repeatability_mm = 0 | 7:20: repeatability_mm is 0, expected a number above 0
          """)
  void topLevel(String oldLine, String newLine, String expected) {
    assertEquals(expected, refusal(oldLine, newLine));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          baud = 4800     | baud = 0          | 9:8: baud is 0, expected a whole number from 1 to 4000000
          baud = 4800     | bauds = 4800      | 8:1: missing baud in [line], which is required; line 9 has bauds
          data_bits = 7   | data_bits = 9     | 10:13: data_bits is 9, expected a whole number from 5 to 8
          parity = "even" | parity = "Even"   | 11:10: parity is "Even", expected one of "even", "mark", "none", "odd", "space"
          stop_bits = 2   | stop_bits = 1.25  | 12:13: stop_bits is 1.25, expected 1, 1.5 or 2
          stop_bits = 2   | stop_bits = 3     | 12:13: stop_bits is 3, expected a number from 1.0 to 2.0
          dtr = true      | dtr = 1           | 13:7: dtr is 1, expected true or false
          rts = false     | rts = false~cts = true | 15:1: unknown key cts in [line], did you mean rts?
          """)
  void line(String oldLine, String newLine, String expected) {
    assertEquals(expected, refusal(oldLine, newLine));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          kind = "line"          | kind = "packet"       | 17:8: kind is "packet", expected one of "line", "fixed", "silence", "modbus-rtu"
          kind = "line"          | kind = "silence"      | 16:1: missing quiet_ms in [frame], which is required
          kind = "line"          | kind = "silence"~quiet_ms = 0 | 18:12: quiet_ms is 0, expected a number above 0
          kind = "line"          | kind = "silence"~quiet_ms = 20 | 19:1: unknown key ends_with in [frame], expected one of kind, quiet_ms, max_bytes
          kind = "line"          | kind = "modbus-rtu"   | 18:1: unknown key ends_with in [frame], expected one of kind
          ends_with = "\\r\\n"   | ends_with = ""        | 18:13: ends_with is "", expected one or more ASCII characters
          ends_with = "\\r\\n"   | ends_with = "é"       | 18:13: ends_with is "é", expected one or more ASCII characters
          ends_with = "\\r\\n"   | ends_with_hex = "0d0" | 18:17: ends_with_hex is "0d0", expected pairs of hexadecimal digits, such as "0d0a"
          ends_with = "\\r\\n"   | ends_with = "\\r"~ends_with_hex = "0d" | 19:17: both ends_with and ends_with_hex, expected one of them
          ends_with = "\\r\\n"   | # no ending           | 16:1: missing ends_with in [frame], which is required
          max_bytes = 64         | max_bytes = 2         | 19:13: max_bytes is 2, expected a whole number from 3 to 65536
          max_bytes = 64         | max_bytes = 64.5      | 19:13: max_bytes is 64.5, expected a whole number from 3 to 65536
          max_bytes = 64         | max_bytes = 64~bytes = 3 | 20:1: unknown key bytes in [frame], expected one of kind, ends_with, ends_with_hex, max_bytes
          """)
  void frame(String oldLine, String newLine, String expected) {
    assertEquals(expected, refusal(oldLine, newLine));
  }

  @Test
  void fixedFrameWithoutRoomForAMessage() {
    String text =
        ProfileSample.TEXT.replaceAll(
            "(?s)kind = \"line\".*\\[decode]",
            "kind = \"fixed\"\nbytes = 3\nstarts_with_hex = \"02\"\nends_with = \"\\\\r\\\\n\"\n[decode]");
    assertEquals(
        "g:18:9: bytes is 3, expected a whole number from 4 to 65536",
        Problem.of(() -> ProfileSample.parse(text)));
  }

  @Test
  void patternThatDoesNotCompile() {
    String pattern = "pattern = '^(?<value>[+-]?\\d+\\.\\d+)(?:\\s*(?<unit>mm|in))?$'";
    assertEquals(
        "22:11: pattern is no regular expression: Unclosed group at its character 14",
        refusal(pattern, "pattern = '^(?<value>\\d+'"));
  }

  @Test
  void patternWithoutAValue() {
    String pattern = "pattern = '^(?<value>[+-]?\\d+\\.\\d+)(?:\\s*(?<unit>mm|in))?$'";
    assertEquals(
        "22:11: pattern has no group (?<value>...), expected one",
        refusal(pattern, "pattern = '^(?<size>\\d+)$'"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          rule = "hold"                        | 25:8: rule is "hold", expected one of "press", "settle", "rock"
          rule = "rock"~min_rocks = 0          | 26:13: min_rocks is 0, expected a whole number from 1 to 1000
          rule = "rock"~leaves_above_mm = 0    | 26:19: leaves_above_mm is 0, expected a number above 0
          rule = "rock"~for_s = 1              | 26:1: unknown key for_s in [pick], expected one of rule, leaves_above_mm, leaves_after_s, min_rocks
          rule = "press"~stuck_after = 1       | 26:15: stuck_after is 1, expected a whole number from 2 to 1000
          rule = "settle"~within_mm = -1       | 26:13: within_mm is -1, expected a number above 0
          rule = "settle"~move_mm = 0.003      | 26:11: move_mm is 0.003, expected more than the 0.003 mm within which it counts as still
          """)
  void pick(String newLine, String expected) {
    assertEquals(expected, refusal("rule = \"rock\"", newLine));
  }
}
