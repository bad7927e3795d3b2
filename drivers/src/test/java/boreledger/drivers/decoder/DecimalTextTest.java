package boreledger.drivers.decoder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalTextTest {
  private static String why(String text) {
    return assertThrows(Unreadable.class, () -> DecimalText.parse(text)).getMessage();
  }

  private static void assertNumber(String expected, String text) throws Unreadable {
    assertEquals(0, new BigDecimal(expected).compareTo(DecimalText.parse(text)), text);
  }

  /** Forms that IEEE 488.2, 7.7.2, has a forgiving listener take, and 8.7.2 to 8.7.4 responses. */
  @ParameterizedTest
  @CsvSource({
    "42.69, 42.69",
    "-5.123456789, -5.123456789",
    "1.0005E+3, 1000.5",
    "-99.123E-1, -9.9123",
    "42, 42",
    ".5, 0.5",
    "1., 1",
    "1E3, 1000",
    "1e3, 1000",
    "1.5E+3, 1500",
    "-2.5E2, -250",
    "+007.50, 7.5"
  })
  void ieee488Numbers(String text, String expected) throws Unreadable {
    assertNumber(expected, text);
  }

  /** What IEEE 488.2, 7.7.2, does not take. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "-", "+", ".", "E3", "1E", "1E+", "1.2.3", "1 2", "1V", "0x10", "--1", "1,2,3"
      })
  void anythingElseIsNoNumber(String text) {
    assertEquals("\"" + text + "\" is no decimal number", why(text));
  }

  @Test
  void commaIsAPointAndSpacesMayStandAround() throws Unreadable {
    assertNumber("-0.5", " - 0,5 ");
    assertNumber("0.5", "+  ,5");
  }

  @Test
  void digitsUpTo255AreReadExactly() throws Unreadable {
    String digits = "1".repeat(255);
    assertNumber(digits, "000" + digits);
    assertNumber("0." + digits, "0." + digits);
    assertEquals("\"" + "1".repeat(60) + "...\" has more than 255 digits", why(digits + "1"));
  }

  @Test
  void leadingZerosDoNotCount() throws Unreadable {
    assertNumber("1", "0".repeat(1000) + "1");
    assertNumber("0", "0." + "0".repeat(1000));
  }

  @Test
  void exponentUpTo32000IsRead() throws Unreadable {
    assertNumber("1E32000", "1E32000");
    assertNumber("1E-32000", "1E-0032000");
    assertEquals("\"1E32001\" has an exponent beyond 32000", why("1E32001"));
    assertEquals(
        "\"1E-99999999999999999999\" has an exponent beyond 32000", why("1E-99999999999999999999"));
  }

  /** SCPI-99, volume 1, 7.2.1.4 and 7.2.1.5. */
  @Test
  void scpiInfinityAndNotANumberAreNoNumbers() {
    assertEquals("\"9.91E37\" means not a number", why("9.91E37"));
    assertEquals("\"9.9E+37\" means infinity", why("9.9E+37"));
    assertEquals("\"-9.9E37\" means infinity", why("-9.9E37"));
  }
}
