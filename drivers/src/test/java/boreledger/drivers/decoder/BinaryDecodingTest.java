package boreledger.drivers.decoder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.LengthUnit;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers in bytes of a fixed frame: integers, floats and packed digits, with their bits. */
class BinaryDecodingTest {
  private static final String FRAME = "[frame]\nkind = 'fixed'\nbytes = %d\n[decode]\n";

  private static Decoded decode(String hex, String decode) throws Exception {
    int bytes = hex.replace(" ", "").length() / 2;
    GaugeProfile profile = Gauges.of(FRAME.formatted(bytes) + decode);
    return Gauges.decode(profile, hex);
  }

  private static Sample sample(String hex, String decode) throws Exception {
    return assertInstanceOf(Sample.class, decode(hex, decode));
  }

  private static String why(String hex, String decode) throws Exception {
    return assertInstanceOf(Rejected.class, decode(hex, decode)).why();
  }

  private static String integer(int bytes, String order, String more) {
    return "kind = 'integer'\nat = 1\nbytes = %d\nbyte_order = '%s'\n%s\n"
        .formatted(bytes, order, more);
  }

  @ParameterizedTest
  @CsvSource({
    "02 7f 0d, big, true, 0.127",
    "02 80 0d, big, true, -0.128",
    "02 80 0d, big, false, 0.128",
    "02 2710 0d, big, true, 10",
    "02 1027 0d, little, true, 10",
    "02 d8f0 0d, big, true, -10",
    "02 d8f0 0d, big, false, 55.536",
    "02 ffd8f0 0d, big, true, -10",
    "02 f0d8ffff 0d, little, true, -10",
    "02 ffffffffffffd8f0 0d, big, true, -10",
    "02 00000000000000000d, little, true, 0"
  })
  void integersOfOneToEightBytes(String hex, String order, boolean signed, double expectedMm)
      throws Exception {
    int bytes = hex.replace(" ", "").length() / 2 - 2;
    String more = "scale = 0.001\nsigned = " + signed;
    assertEquals(expectedMm, sample(hex, integer(bytes, order, more)).valueMm());
  }

  @Test
  void placesMayCountFromTheEnd() throws Exception {
    String decode =
        "kind = 'integer'\nat = -3\nbytes = 2\nbyte_order = 'big'\nscale = 0.001\n"
            + "negative = { at = -1, mask = 1 }";
    assertEquals(-0.258, sample("0505 0102 01", decode).valueMm());
  }

  @Test
  void largestCountBeyondAKilometreIsRejected() throws Exception {
    assertEquals(
        "7fffffff for 2.147483647E9 is beyond a kilometre",
        why("02 7fffffff 0d", integer(4, "big", "scale = 1")));
  }

  @Test
  void negativeZeroIsZero() throws Exception {
    String more = "scale = 0.001\nnegative = { at = 1, mask = 0x80 }";
    assertEquals(0.0, sample("02 8000 0d", integer(2, "big", more)).valueMm());
  }

  @Test
  void signBitAmongTheBytesIsNoPartOfTheNumber() throws Exception {
    String more = "scale = 0.001\nnegative = { at = 1, mask = 0x80 }";
    assertEquals(-12.345, sample("02 803039 00 0d", integer(3, "big", more)).valueMm());
    assertEquals(12.345, sample("02 003039 00 0d", integer(3, "big", more)).valueMm());
  }

  @Test
  void signMayBeANibbleOfItsOwn() throws Exception {
    String decode =
        "kind = 'packed-digits'\nat = 0\nbytes = 3\nbyte_order = 'big'\nscale = 0.001\n"
            + "negative = { at = 0, mask = 0xF0, equals = 0xD0 }";
    assertEquals(-12.345, sample("d12345", decode).valueMm());
    assertEquals(12.345, sample("012345", decode).valueMm());
  }

  /** Single and double 0.1 and 96.0213: printed by CPython 3.11's struct.pack. */
  @ParameterizedTest
  @CsvSource({
    "3dcccccd, big, 0.10000000149011612",
    "cdcccc3d, little, 0.10000000149011612",
    "3fb999999999999a, big, 0.1",
    "9a9999999999b93f, little, 0.1",
    "80000000, big, 0.0",
    "00000001, big, 1.401298464324817E-45"
  })
  void floatsAreTakenExactly(String hex, String order, double expectedMm) throws Exception {
    String decode =
        "kind = 'float'\nat = 0\nbytes = %d\nbyte_order = '%s'".formatted(hex.length() / 2, order);
    assertEquals(expectedMm, sample(hex, decode).valueMm());
  }

  /** Bit patterns of IEEE 754-2008, 3.4. */
  @ParameterizedTest
  @CsvSource({
    "7f800000, infinity",
    "ff800000, minus infinity",
    "7fc00000, not a number",
    "ff800001, not a number",
    "7ff0000000000000, infinity",
    "fff0000000000000, minus infinity",
    "7ff8000000000000, not a number"
  })
  void floatsThatAreNoNumbersAreRefusedByName(String hex, String name) throws Exception {
    String decode =
        "kind = 'float'\nat = 0\nbytes = %d\nbyte_order = 'big'".formatted(hex.length() / 2);
    assertEquals(hex + " means " + name, why(hex, decode));
  }

  @ParameterizedTest
  @CsvSource({
    "012345, big, high-first, 12.345",
    "103254, big, low-first, 12.345",
    "452301, little, high-first, 12.345",
    "543210, little, low-first, 12.345"
  })
  void packedDigitsInEveryOrder(String hex, String byteOrder, String nibbleOrder, double expectedMm)
      throws Exception {
    String decode =
        "kind = 'packed-digits'\nat = 0\nbytes = 3\nscale = 0.001\nbyte_order = '%s'\n"
            .formatted(byteOrder);
    assertEquals(
        expectedMm, sample(hex, decode + "nibble_order = '" + nibbleOrder + "'").valueMm());
  }

  @Test
  void everyNibbleAboveNineIsRefused() throws Exception {
    int refused = 0;
    for (int value = 0; value < 256; value++) {
      String hex = HexFormat.of().toHexDigits((byte) value);
      boolean isDecimal = hex.chars().allMatch(Character::isDigit);
      Decoded decoded =
          decode(hex, "kind = 'packed-digits'\nat = 0\nbytes = 1\nbyte_order = 'big'\nscale = 1");
      assertEquals(isDecimal, decoded instanceof Sample, hex);
      refused += isDecimal ? 0 : 1;
    }
    assertEquals(156, refused);
    assertEquals(
        "0a holds the nibble a, which is no digit",
        why("0a", "kind = 'packed-digits'\nat = 0\nbytes = 1\nbyte_order = 'big'\nscale = 1"));
  }

  @Test
  void decimalPositionPutsThePoint() throws Exception {
    String decode =
        "kind = 'packed-digits'\nat = 0\nbytes = 3\nbyte_order = 'big'\n"
            + "decimal_position = { at = 3, mask = 0xF0 }\n"
            + "inch = { at = 3, mask = 0x01 }";
    assertEquals(12.345, sample("012345 30", decode).valueMm());
    assertEquals(1.2345, sample("012345 40", decode).valueMm());
    assertEquals(12345, sample("012345 00", decode).valueMm());
    // 1.2345 in is 31.3563 mm: 25.4 mm to the inch exactly.
    assertEquals(31.3563, sample("012345 41", decode).valueMm());
    assertEquals("10 digits after the point, expected at most 9", why("012345 a0", decode));
  }

  @Test
  void unitBitsNameTheUnit() throws Exception {
    String inch = integer(2, "big", "scale = 0.001\ninch = { at = 3, mask = 0x01 }");
    assertEquals(LengthUnit.IN, sample("02 0001 01", inch).unit());
    assertEquals(0.0254, sample("02 0001 01", inch).valueMm());
    assertEquals(LengthUnit.MM, sample("02 0001 00", inch).unit());
    String millimetre = integer(2, "big", "scale = 0.001\nmillimetre = { at = 3, mask = 2 }");
    assertEquals(LengthUnit.IN, sample("02 0001 00", millimetre).unit());
    assertEquals(LengthUnit.MM, sample("02 0001 02", millimetre).unit());
    String both =
        integer(
            2,
            "big",
            "scale = 0.001\ninch = { at = 3, mask = 1 }\nmillimetre = { at = 3, mask = 2 }");
    assertEquals(LengthUnit.IN, sample("02 0001 01", both).unit());
    assertEquals(LengthUnit.MM, sample("02 0001 02", both).unit());
    assertEquals("its bits name neither unit", why("02 0001 00", both));
    assertEquals("its bits name both units", why("02 0001 03", both));
  }

  @Test
  void inchesMayHaveAScaleOfTheirOwn() throws Exception {
    String more = "scale = 0.001\ninch_scale = 0.00005\ninch = { at = 3, mask = 1 }";
    assertEquals(0.00127, sample("02 0001 01", integer(2, "big", more)).valueMm());
    assertEquals(0.001, sample("02 0001 00", integer(2, "big", more)).valueMm());
  }

  @Test
  void frameTooShortForWhatStandsInItIsRejected() throws Exception {
    GaugeProfile profile =
        Gauges.of(
            "[frame]\nkind = 'silence'\nquiet_ms = 20\nmax_bytes = 8\n[decode]\n"
                + integer(2, "big", "scale = 1"));
    for (String hex : List.of("", "02", "0201")) {
      assertEquals(
          hex.length() / 2 + " bytes, too few for what stands at 1",
          ((Rejected) Gauges.decode(profile, hex)).why());
    }
  }
}
