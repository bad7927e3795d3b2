package boreledger.drivers.decoder;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.Crc;
import boreledger.drivers.profile.GaugeProfile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Numbers in Modbus registers. Worked messages are those of MODBUS Application Protocol V1.1b3,
 * 6.3, 6.4 and 7, with an address before and the CRC behind.
 */
class RegisterDecodingTest {
  private static GaugeProfile profile(
      int slave, int function, int register, int registers, String more) throws Exception {
    return Gauges.of(
        """
        [frame]
        kind = 'modbus-rtu'
        [decode]
        kind = 'modbus-registers'
        slave = %d
        function = %d
        register = %d
        registers = %d
        %s
        """
            .formatted(slave, function, register, registers, more));
  }

  private static String why(GaugeProfile profile, String hex) {
    return assertInstanceOf(Rejected.class, Gauges.decode(profile, hex)).why();
  }

  private static double mm(GaugeProfile profile, String hex) {
    return assertInstanceOf(Sample.class, Gauges.decode(profile, hex)).valueMm();
  }

  /** A response of slave 1 to function 3 with its CRC, which the worked frames check elsewhere. */
  private static String response(String registers) {
    int bytes = registers.length() / 2;
    Bytes body = Bytes.ofHex(String.format("0103%02x", bytes) + registers);
    int crc = (int) Crc.MODBUS.of(body);
    return body.toHex() + String.format("%02x%02x", crc & 0xFF, crc >>> 8);
  }

  @Test
  void publishedInputRegisterIsTen() throws Exception {
    GaugeProfile profile = profile(17, 4, 8, 1, "type = 'integer'\nscale = 0.001");
    assertEquals(0.010, mm(profile, "11 04 02 00 0a f8 f4"));
  }

  @ParameterizedTest
  @CsvSource({
    "000186a0, big, 100",
    "86a00001, little, 100",
    "fffe7960, big, -100",
    "0000000000004e20, big, 20",
    "4e20000000000000, little, 20"
  })
  void wordOrderArrangesRegisters(String registers, String order, double expectedMm)
      throws Exception {
    GaugeProfile profile =
        profile(
            1,
            3,
            0,
            registers.length() / 4,
            "type = 'integer'\nscale = 0.001\nword_order = '" + order + "'");
    assertEquals(expectedMm, mm(profile, response(registers)));
  }

  @Test
  void floatsAndPackedDigits() throws Exception {
    String little = "\nword_order = 'little'";
    assertEquals(0.1, mm(profile(1, 3, 0, 4, "type = 'float'"), response("3fb999999999999a")));
    assertEquals(
        0.1, mm(profile(1, 3, 0, 4, "type = 'float'" + little), response("999a999999993fb9")));
    assertEquals(-12.5, mm(profile(1, 3, 0, 2, "type = 'float'"), response("c1480000")));
    assertEquals(
        12.345,
        mm(profile(1, 3, 0, 2, "type = 'packed-digits'\nscale = 0.001"), response("00012345")));
  }

  @Test
  void unsignedRegisters() throws Exception {
    String more = "type = 'integer'\nscale = 0.001\nsigned = ";
    assertEquals(65.535, mm(profile(1, 3, 0, 1, more + false), response("ffff")));
    assertEquals(-0.001, mm(profile(1, 3, 0, 1, more + true), response("ffff")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          01 83 01 80 f0             | slave 1 answers with exception 1, illegal function
          01 83 02 c0 f1             | slave 1 answers with exception 2, illegal data address
          01 83 03 01 31             | slave 1 answers with exception 3, illegal data value
          01 83 04 40 f3             | slave 1 answers with exception 4, server device failure
          01 83 06 c1 32             | slave 1 answers with exception 6, server device busy
          01 83 7f 00 d0             | slave 1 answers with exception 127, not a standard one
          11 03 06 022b00000064 c8ba | the response's slave is 17, expected 1
          01 04 02 00 0a 39 37       | the response's function is 4, expected 3
          01 84 02 c2 c1             | the response's function is 132, expected 3
          01 03 06 022b00000064 057a | the response's number of data bytes is 6, expected 4
          01 03 00 6b 00 02 b5 d7    | the request itself came back, no response
          01 03 04 00                | 4 bytes, too few for a Modbus response
          """)
  void otherMessagesAreRejectedByReason(String hex, String why) throws Exception {
    assertEquals(why, why(profile(1, 3, 107, 2, "type = 'integer'\nscale = 1"), hex));
  }
}
