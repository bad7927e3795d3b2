package boreledger.drivers.decoder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.framer.FrameEvent;
import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.DecodeSpec;
import boreledger.drivers.profile.LengthUnit;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PatternReaderTest {
  private static final String SIGNED = "^(?<value>[+-]?\\d+\\.\\d+)(?:\\s*(?<unit>mm|in))?$";
  private static final String LOOSE = "^(?<value>[^a-z]*?)\\s*(?<unit>[a-zA-Z\"]*)$";

  private static Decoded decode(String pattern, LengthUnit unsent, Bytes payload) {
    DecodeSpec.ByPattern spec = new DecodeSpec.ByPattern(Pattern.compile(pattern));
    Bytes raw = payload.plus(Bytes.ofHex("0d0a"));
    return Decoders.of(Gauges.of(spec, unsent)).decode(new FrameEvent.Frame(1.5, raw, payload));
  }

  private static Decoded decode(String pattern, String text) {
    Bytes payload = Bytes.of(text.getBytes(StandardCharsets.ISO_8859_1));
    return decode(pattern, LengthUnit.MM, payload);
  }

  private static Sample sample(String pattern, String text) {
    return assertInstanceOf(Sample.class, decode(pattern, text));
  }

  private static String why(String pattern, String text) {
    return assertInstanceOf(Rejected.class, decode(pattern, text)).why();
  }

  @Test
  void picturedFrameIsReadAsPictured() {
    Bytes payload = Bytes.ofHex("2d302e30303035696e");
    assertEquals(
        new Sample(1.5, Bytes.ofHex("2d302e30303035696e0d0a"), -0.0127, LengthUnit.IN, true),
        decode(SIGNED, LengthUnit.MM, payload));
  }

  @Test
  void valueWithoutAUnitHasTheProfiles() {
    Bytes payload = Bytes.ofHex("2b302e30313230");
    assertEquals(
        new Sample(1.5, Bytes.ofHex("2b302e303132300d0a"), 0.012, LengthUnit.MM, false),
        decode(SIGNED, LengthUnit.MM, payload));
    assertEquals(0.3048, ((Sample) decode(SIGNED, LengthUnit.IN, payload)).valueMm());
  }

  @Test
  void patternWithoutAUnitGroupHasTheProfilesUnit() {
    assertEquals(0.5, sample("^(?<value>\\d\\.\\d)$", "0.5").valueMm());
  }

  @ParameterizedTest
  @CsvSource({
    "12.345-, -12.345",
    "12.345+, 12.345",
    "12.345 M, -12.345",
    "12.345 P, 12.345",
    "12.345 below, -12.345",
    "0.000-, 0"
  })
  void groupNegativeThatIsNotEmptyTurnsTheSign(String text, double valueMm) {
    String pattern = "^(?<value>[+-]?\\d+\\.\\d+) ?(?:(?<negative>-|M|below)|\\+|P)$";
    assertEquals(valueMm, sample(pattern, text).valueMm(), 0);
  }

  @Test
  void signOfItsOwnBesideGroupNegativeIsRefused() {
    String pattern = "^(?<value>[+-]?\\d+\\.\\d+)(?<negative>-?)$";
    assertEquals("\"-1.5\" has a sign of its own and another", why(pattern, "-1.5-"));
    assertEquals(-1.5, sample(pattern, "-1.5").valueMm());
  }

  @Test
  void inchesAreConvertedWithoutARoundingOfTheirOwn() {
    // 25.4 mm to the inch exactly; in doubles 3.7701 * 25.4 is 95.76053999999999.
    assertEquals(95.76054, sample(SIGNED, "3.7701 in").valueMm());
    assertEquals(0.00127, sample(SIGNED, "0.00005in").valueMm());
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      textBlock =
          """
          1.5mm   | 1.5
          1.5 MM  | 1.5
          1in     | 25.4
          1 Inch  | 25.4
          1"      | 25.4
          - 0,5mm | -0.5
          """)
  void unitsAreKnownInEitherCase(String text, double expectedMm) {
    assertEquals(expectedMm, sample(LOOSE, text).valueMm());
  }

  @Test
  void unanchoredPatternIsSearchedFor() {
    assertEquals(0.012, sample("(?<value>[+-]\\d\\.\\d+)", "GA01 +0.012;").valueMm());
  }

  @Test
  void patternThatAlsoMatchesNothingIsSearchedFor() {
    assertEquals(12.5, sample("(?<value>\\d*\\.?\\d*)", "x12.5y").valueMm());
  }

  @Test
  void frameWithTwoValuesIsRejected() {
    assertEquals(
        "\"+0.012+0.013\" holds more than one value",
        why("(?<value>[+-]\\d\\.\\d{3})", "+0.012+0.013"));
  }

  @Test
  void emptyFrameIsRejected() {
    assertEquals("empty frame", why(SIGNED, ""));
  }

  @Test
  void byteThatIsNotAsciiIsRejected() {
    assertEquals("byte 3 is b1, not ASCII", why("(?<value>\\d+)", "12\u00b15"));
  }

  @Test
  void frameThatDoesNotMatchIsRejectedWithWhatWasFound() {
    assertEquals("\"ERR?7\" does not match the pattern", why(SIGNED, "ERR\u00017"));
  }

  @Test
  void matchWithoutAValueIsRejected() {
    assertEquals("\"--\" does not match the pattern", why("^(?<value>\\d+)?-*$", "--"));
  }

  @Test
  void valueThatIsNoNumberIsRejected() {
    assertEquals("\"1.2.3\" is no decimal number", why("^(?<value>.*)$", "1.2.3"));
  }

  @Test
  void otherUnitIsRejected() {
    assertEquals("unit \"cm\" is neither mm nor in", why(LOOSE, "1.5 cm"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1000000.1", "-1E+30000", "1E7"})
  void lengthBeyondAKilometreIsRejected(String text) {
    assertEquals("\"" + text + "\" is beyond a kilometre", why("^(?<value>.*)$", text));
  }

  @Test
  void numberTooSmallForADoubleIsZero() {
    assertEquals(0.0, sample("^(?<value>.*)$", "-1E-30000").valueMm());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"^(?<value>(?:\\d+)+)$", "^(?<value>(?:\\d|\\d\\d)*)$", "(.*)*(?<value>\\d)x"})
  void patternThatTriesEveryWayIsStopped(String pattern) {
    String text = "1".repeat(4_000) + "!";
    String why = assertTimeoutPreemptively(Duration.ofSeconds(20), () -> why(pattern, text));
    assertTrue(
        why.equals("the pattern takes too many steps on it")
            || why.endsWith("does not match the pattern"),
        why);
  }

  @Test
  void backtrackingBeyondAllTimeIsRejected() {
    assertEquals(
        "the pattern takes too many steps on it",
        why("^(?<value>(\\d+)+)\\2x$", "1".repeat(60) + "!"));
  }

  @Test
  void patternThatRecursesTooDeepIsRejected() {
    assertEquals(
        "the pattern takes too many steps on it", why("^(?<value>(?:1|2)*)x$", "1".repeat(60_000)));
  }

  @Test
  void anyBytesGiveASampleOrARejection() {
    String alphabet = "+-0123456789., mineE\"\u0000\u00ff";
    int samples = 0;
    for (int seed = 0; seed < 20_000; seed++) {
      Random random = new Random(seed);
      StringBuilder text = new StringBuilder();
      for (int i = random.nextInt(8); i >= 0; i--) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      Decoded decoded = decode(LOOSE, text.toString());
      if (decoded instanceof Sample sample) {
        samples++;
        assertTrue(Double.isFinite(sample.valueMm()), "seed " + seed);
      }
    }
    assertTrue(samples > 100);
  }
}
