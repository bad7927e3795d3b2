package boreledger.drivers.decoder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks that frames carry about themselves. */
class ChecksTest {
  private static Decoded decode(String hex, String check) throws Exception {
    int bytes = hex.replace(" ", "").length() / 2;
    return Gauges.decode(
        Gauges.of(
            "[frame]\nkind = 'fixed'\nbytes = "
                + bytes
                + "\n[decode]\nkind = 'integer'\nat = 1\nbytes = 2\nbyte_order = 'big'\n"
                + "scale = 0.001\n[[check]]\n"
                + check),
        hex);
  }

  private static String why(String hex, String check) throws Exception {
    return assertInstanceOf(Rejected.class, decode(hex, check)).why();
  }

  /** Sums worked out by hand. */
  @ParameterizedTest
  @CsvSource({
    "sum8, bytes, 02 01ff 02 0d",
    "xor8, bytes, 02 01ff fc 0d",
    "sum8, hex-text, 02 01ff 3032 0d",
    "xor8, hex-text, 02 01ff 4643 0d",
    "xor8, hex-text, 02 01ff 6663 0d"
  })
  void rightSumPasses(String kind, String as, String hex) throws Exception {
    String check = "kind = '%s'\nfrom = 0\nto = 3\nat = 3\nas = '%s'\n".formatted(kind, as);
    assertEquals(0.511, assertInstanceOf(Sample.class, decode(hex, check)).valueMm());
  }

  @Test
  void wrongSumSaysBothValues() throws Exception {
    assertEquals(
        "sum8 in the frame is 03, computed 02",
        why("02 01ff 03 0d", "kind = 'sum8'\nfrom = 0\nto = 3\nat = 3\n"));
    assertEquals(
        "xor8 in the frame is 0c, computed fc",
        why("02 01ff 3063 0d", "kind = 'xor8'\nfrom = 0\nto = 3\nat = 3\nas = 'hex-text'\n"));
  }

  @Test
  void hexTextThatIsNoneIsRejected() throws Exception {
    assertEquals(
        "sum8 in the frame is \"-2\", no hexadecimal text",
        why("02 01ff 2d32 0d", "kind = 'sum8'\nfrom = 0\nto = 3\nat = 3\nas = 'hex-text'\n"));
  }

  private static String modbus(String order) {
    return "kind = 'crc'\nfrom = 0\nto = -2\nat = -2\nwidth = 16\npolynomial = 0x8005\n"
        + "init = 0xFFFF\nreflect_in = true\nreflect_out = true\nxor_out = 0\nbyte_order = '"
        + order
        + "'\n";
  }

  /** MODBUS Application Protocol V1.1b3, 6.3 with address 17, and public vectors of its CRC. */
  @Test
  void crcStandsInEitherByteOrder() throws Exception {
    String response = "11 03 06 02 2b 00 00 00 64";
    assertInstanceOf(Sample.class, decode(response + "c8 ba", modbus("little")));
    assertInstanceOf(Sample.class, decode(response + "ba c8", modbus("big")));
    assertEquals("crc in the frame is c8ba, computed bac8", why(response + "c8 ba", modbus("big")));
  }

  @Test
  void everyCheckMustPass() throws Exception {
    String first = "kind = 'sum8'\nfrom = 0\nto = 3\nat = 3\n";
    String second = "[[check]]\nkind = 'xor8'\nfrom = 1\nto = 4\nat = -1\n";
    assertInstanceOf(Sample.class, decode("02 01ff 02 fc", first + second));
    assertEquals("xor8 in the frame is 00, computed fc", why("02 01ff 02 00", first + second));
  }

  @Test
  void failedCheckComesBeforeEverythingElse() throws Exception {
    assertEquals(
        "sum8 in the frame is 00, computed 02",
        why(
            "02 01ff 00",
            "kind = 'sum8'\nfrom = 0\nto = 3\nat = 3\n"
                + "[flags]\nout_of_range = { at = 0, mask = 2 }\n"));
  }
}
