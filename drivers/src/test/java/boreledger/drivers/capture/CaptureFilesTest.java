package boreledger.drivers.capture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.Problem;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.line.LineEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CaptureFilesTest {
  private static final String HEADER =
      "{\"format\":\"boreledger-capture/1\",\"gauge\":\"signed.gauge.toml\",\"measure\":\"bore\","
          + "\"started\":\"2031-05-06T08:00:00Z\",\"setting_temp_c\":20.4,\"block_temp_c\":21}";

  @TempDir Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("bores.capture.jsonl"), text);
  }

  private Capture read(String text) throws Exception {
    return CaptureFiles.read(file(text));
  }

  private String refusal(String text) throws IOException {
    Path file = file(text);
    String message = Problem.of(() -> CaptureFiles.read(file));
    assertTrue(message.startsWith(file + ":"), message);
    return message.substring((file + ":").length());
  }

  @Test
  void captureIsReadCompletely() throws Exception {
    Capture capture =
        read(HEADER + "\n{\"t\":0.000,\"rx\":\"2b302e\"}\n{\"t\":0.5,\"rx\":\"3031320D0a\"}\n");
    assertEquals("bores.capture.jsonl", capture.fileName());
    assertEquals(
        new CaptureHeader(
            "signed.gauge.toml",
            Measure.BORE,
            null,
            Instant.parse("2031-05-06T08:00:00Z"),
            20.4,
            21.0),
        capture.header());
    assertEquals(
        List.of(
            new LineEvent.Chunk(0, Bytes.ofHex("2b302e")),
            new LineEvent.Chunk(0.5, Bytes.ofHex("3031320d0a"))),
        capture.chunks());
  }

  @Test
  void temperaturesMayBeLeftOut() throws Exception {
    CaptureHeader header =
        read(HEADER.replaceAll(",\"(setting|block)_temp_c\":[0-9.]+", "")).header();
    assertNull(header.settingTempC());
    assertNull(header.blockTempC());
  }

  @Test
  void gapAndRingDepthCapturesNameTheirRing() throws Exception {
    String gap = HEADER.replace("\"bore\"", "\"gap\",\"ring\":\"top\"");
    assertEquals(Measure.GAP, read(gap).header().measure());
    assertEquals("top", read(gap).header().ring());
    String depth = HEADER.replace("\"bore\"", "\"ring-depth\",\"ring\":\"second\"");
    assertEquals(Measure.RING_DEPTH, read(depth).header().measure());
    assertEquals("second", read(depth).header().ring());
  }

  @Test
  void commentIsAllowedOnAnyLineAndAlone() throws Exception {
    String text =
        HEADER.replace("{\"format", "{\"comment\":\"made by hand\",\"format")
            + "\n{\"comment\":\"cylinder 1\"}\n{\"t\":1,\"rx\":\"\",\"comment\":[1]}\n";
    assertEquals(List.of(new LineEvent.Chunk(1, Bytes.EMPTY)), read(text).chunks());
  }

  @Test
  void lineThatWentAwayAndCameBackIsReadSo() throws Exception {
    String text =
        HEADER
            + "\n{\"t\":1,\"rx\":\"2b30\"}\n{\"t\":2,\"gone\":\"out\"}\n{\"t\":3,\"back\":\"in\"}\n"
            + "{\"t\":4,\"rx\":\"0a\"}\n";
    Capture capture = read(text);
    assertEquals(
        List.of(
            new LineEvent.Chunk(1, Bytes.ofHex("2b30")),
            new LineEvent.Gone(2, "out"),
            new LineEvent.Back(3, "in"),
            new LineEvent.Chunk(4, Bytes.ofHex("0a"))),
        capture.said());
    assertEquals(2, capture.chunks().size());
    assertEquals(
        List.of(
            new LineEvent.Chunk(1, Bytes.ofHex("2b30")),
            new LineEvent.End(2),
            new LineEvent.Chunk(4, Bytes.ofHex("0a")),
            new LineEvent.End(4)),
        capture.events());
  }

  @Test
  void lineEndsOfOtherSystemsAndAMissingLastOneAreRead() throws Exception {
    String text = "\uFEFF" + HEADER + "\r\n{\"t\":1,\"rx\":\"00\"}\r\n{\"t\":1,\"rx\":\"01\"}";
    assertEquals(2, read(text).chunks().size());
  }

  /** The examples of RFC 3339, section 5.8, with their instants in seconds since 1970. */
  @ParameterizedTest
  @CsvSource({
    "1985-04-12T23:20:50.52Z, 482196050, 520000000",
    "1996-12-19T16:39:57-08:00, 851042397, 0",
    "1937-01-01T12:00:27.87+00:20, -1041337173, 870000000"
  })
  void startIsAnRfc3339Instant(String started, long seconds, int nanos) throws Exception {
    Capture capture = read(HEADER.replace("2031-05-06T08:00:00Z", started));
    assertEquals(Instant.ofEpochSecond(seconds, nanos), capture.header().started());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          capture/1           | capture/2            | format is "boreledger-capture/2", expected "boreledger-capture/1"
          "gauge":            | "gage":              | missing gauge, which is required
          "signed.gauge.toml" | " "                  | gauge is " ", expected a text
          "signed.gauge.toml" | 7                    | gauge is 7, expected a text
          "bore"              | "size"               | measure is "size", expected one of "bore", "gap", "ring-depth"
          "bore"              | "gap"                | missing ring, which is required
          "bore"              | "ring-depth"         | missing ring, which is required
          "bore"              | "gap","ring":""      | ring is "", expected a text
          "bore"              | "bore","ring":"top"  | ring is not for a bore capture, expected no ring
          2031-05-06T08:00:00Z | 2031-05-06T08:00:00 | started is "2031-05-06T08:00:00", expected a date and time such as "2031-05-06T08:00:00Z"
          2031-05-06T08:00:00Z | 2031-02-30T08:00:00Z | started is "2031-02-30T08:00:00Z", expected a date and time such as "2031-05-06T08:00:00Z"
          2031-05-06T08:00:00Z | 2031-05-06T24:00:00Z | started is "2031-05-06T24:00:00Z", expected a date and time such as "2031-05-06T08:00:00Z"
          20.4                | 80.5                 | setting_temp_c is 80.5, expected a temperature from -40.0 to 80.0 °C
          20.4                | 1e999                | setting_temp_c is "Infinity", expected a number
          20.4                | "20.4"               | setting_temp_c is "20.4", expected a number
          20.4                | null                 | setting_temp_c is null, expected a number
          :21                 | :-41                 | block_temp_c is -41, expected a temperature from -40.0 to 80.0 °C
          block_temp_c        | bloc_temp_c          | unknown key bloc_temp_c, expected one of comment, format, gauge, measure, ring, started, setting_temp_c, block_temp_c
          "gauge":            | "format":"x","gauge":| not JSON: Duplicate field 'format'
          """)
  void headerThatCannotBeIsRefused(String old, String replacement, String expected)
      throws Exception {
    assertTrue(HEADER.contains(old));
    assertEquals("1: " + expected, refusal(HEADER.replace(old, replacement) + "\n"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {"t":1.5,"rx":"000"}          | rx has 3 hexadecimal digits, expected pairs
          {"t":1.5,"rx":"0g"}           | rx is "0g", expected hexadecimal digits
          {"t":1.5,"rx":12}             | rx is 12, expected a text
          {"t":1.5}                     | missing rx, which is required
          {"rx":"00"}                   | missing t, which is required
          {}                            | missing t, which is required
          {"t":0.99,"rx":"00"}          | t is 0.99, expected no less than the 1.0 before: time runs back
          {"t":-1,"rx":"00"}            | t is -1, expected seconds since the start, 0 or more
          {"t":"1.5","rx":"00"}         | t is "1.5", expected a number
          {"t":1e999,"rx":"00"}         | t is "Infinity", expected a number
          {"t":NaN,"rx":"00"}           | not JSON: Non-standard token 'NaN'
          {"t":1.5,"rx":"00","tx":"01"} | unknown key tx, expected one of comment, rx, gone, back, t
          {"t":1.5,"rx":"00","gone":""} | found rx and gone, expected one of them
          {"t":1.5,"gone":7}            | gone is 7, expected a text
          {"back":"it is"}              | missing t, which is required
          {"t":1.5,"rx":"00","rx":"01"} | not JSON: Duplicate field 'rx'
          {"t":1.5,"rx":"00"} {}        | not JSON: Trailing token (of type START_OBJECT) found after value (bou...
          {"t":1.5,"rx":"00             | not JSON: Unexpected end-of-input
          [1.5,"00"]                    | [1.5,"00"], expected a JSON object
          t=1.5                         | not JSON: Unrecognized token 't'
          ``                            | an empty line, expected a JSON object
          """)
  void lineThatCannotBeIsRefusedWithItsNumber(String line, String expected) throws Exception {
    String text = HEADER + "\n{\"t\":1,\"rx\":\"00\"}\n" + line + "\n{\"t\":2,\"rx\":\"00\"}\n";
    assertEquals("3: " + expected, refusal(text));
  }

  @Test
  void fileCutInTheMiddleOfALineIsRefusedThere() throws Exception {
    assertEquals(
        "2: not JSON: Unexpected end-of-input; the file is cut off here",
        refusal(HEADER + "\n{\"t\":1,\"rx\":\"2b30"));
    assertEquals(
        "1: not JSON: Unexpected end-of-input; the file is cut off here",
        refusal(HEADER.substring(0, 50)));
  }

  @Test
  void emptyFileIsRefused() throws Exception {
    assertEquals("1: empty file, expected a capture's header", refusal(""));
    assertEquals("1: empty file, expected a capture's header", refusal("\n\n"));
  }

  @Test
  void missingFileIsNamed() {
    Path missing = folder.resolve("none.capture.jsonl");
    assertEquals(missing + ": no such file", Problem.of(() -> CaptureFiles.read(missing)));
  }

  @Test
  void captureCutAnywhereIsReadUpToALinesEndOrRefused() throws Exception {
    String text = HEADER + "\n{\"t\":1,\"rx\":\"00\"}\n{\"t\":2,\"rx\":\"01\"}\n";
    int refused = 0;
    for (int end = 1; end < text.length(); end++) {
      Path file = file(text.substring(0, end));
      boolean whole = text.charAt(end - 1) == '\n' || text.charAt(end) == '\n';
      if (whole) {
        CaptureFiles.read(file);
      } else {
        refused++;
        String message = Problem.of(() -> CaptureFiles.read(file));
        assertTrue(message.endsWith("cut off here"), message);
      }
    }
    assertTrue(refused > 150);
  }
}
