package boreledger.drivers.profile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.drivers.line.Bytes;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CrcTest {
  private static final Bytes DIGITS = Bytes.of("123456789".getBytes(StandardCharsets.US_ASCII));

  /**
   * Check values of public CRC catalogues for the nine characters 123456789; SDLC, HDLC and the
   * three of other widths are from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "CRC-16/ARC, 16, 8005, 0000, true, true, 0000, bb3d",
    "CRC-16/MODBUS, 16, 8005, ffff, true, true, 0000, 4b37",
    "CRC-16/USB, 16, 8005, ffff, true, true, ffff, b4c8",
    "CRC-16/KERMIT, 16, 1021, 0000, true, true, 0000, 2189",
    "CRC-16/XMODEM, 16, 1021, 0000, false, false, 0000, 31c3",
    "CRC-16/IBM-3740, 16, 1021, ffff, false, false, 0000, 29b1",
    "CRC-16/IBM-SDLC, 16, 1021, ffff, true, true, ffff, 906e",
    "CRC-32/ISO-HDLC, 32, 04c11db7, ffffffff, true, true, ffffffff, cbf43926",
    "CRC-8/SMBUS, 8, 07, 00, false, false, 00, f4",
    "CRC-8/MAXIM-DOW, 8, 31, 00, true, true, 00, a1",
    "CRC-12/UMTS, 12, 80f, 000, false, true, 000, daf"
  })
  void checkValuesOfTheCatalogue(
      String name,
      int width,
      String poly,
      String init,
      boolean in,
      boolean out,
      String xor,
      String check) {
    Crc crc = new Crc(width, hex(poly), hex(init), in, out, hex(xor));
    assertEquals(hex(check), crc.of(DIGITS), name);
  }

  /** The platform's own CRC-32 and CRC-32C as a second computation. */
  @Test
  void agreesWithThePlatformOverAllBytes() {
    byte[] all = new byte[256];
    for (int i = 0; i < all.length; i++) {
      all[i] = (byte) i;
    }
    CRC32 crc32 = new CRC32();
    crc32.update(all);
    CRC32C crc32c = new CRC32C();
    crc32c.update(all);
    long ones = 0xFFFFFFFFL;
    assertEquals(
        crc32.getValue(), new Crc(32, 0x04C11DB7L, ones, true, true, ones).of(Bytes.of(all)));
    assertEquals(
        crc32c.getValue(), new Crc(32, 0x1EDC6F41L, ones, true, true, ones).of(Bytes.of(all)));
  }

  /** MODBUS over serial line V1.02, 6.2.2: the frame 02 07 has the CRC 1241, sent 41 12. */
  @Test
  void workedExampleOfTheSerialLineGuide() {
    assertEquals(0x1241, Crc.MODBUS.of(Bytes.ofHex("0207")));
  }

  /** MODBUS Application Protocol V1.1b3, 6.3 and 6.4, addresses added, and public vectors. */
  @ParameterizedTest
  @CsvSource({
    "17, 3, 107, 3, 1103006b00037687",
    "1, 3, 107, 3, 0103006b00037417",
    "17, 4, 8, 1, 110400080001b298",
    "1, 4, 8, 1, 010400080001b008",
    "1, 3, 0, 1, 010300000001840a",
    "1, 3, 0, 2, 010300000002c40b"
  })
  void requestsArePublishedOnes(
      int slave, int function, int register, int registers, String expected) {
    RegisterQuery query = new RegisterQuery(slave, function, register, registers);
    assertEquals(expected, query.request().toHex());
  }

  private static long hex(String digits) {
    return Long.parseLong(digits, 16);
  }
}
