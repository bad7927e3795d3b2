package boreledger.station.truth;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;

/**
 * Gauges that send bytes rather than text. Their bytes stand in the frame's text as Latin-1.
 *
 * <p>Sums are worked out here in their own way: the CRCs by the shifting register of the serial
 * line guide's flow chart, not by the parametric form that the program uses.
 */
final class BinaryWire {
  private static final BigDecimal INCH_STEP = new BigDecimal("0.00001");
  private static final BigDecimal MM_PER_INCH = new BigDecimal("25.4");

  private BinaryWire() {}

  /**
   * Seven bytes: 02, a status byte, a count of three bytes with the most significant first, the sum
   * of all before, 0d. Bit 7 of the status says minus, bit 0 says inch; a count is 0.0001 mm or
   * 0.00001 in.
   */
  static Wire integerWithUnitBit(boolean inch) {
    return mm -> {
      long count = count(inch ? mm / 25.4 : mm, inch ? 5 : 4);
      int status = (count < 0 ? 0x80 : 0) | (inch ? 1 : 0);
      String body = "02" + hex(status, 1) + hex(Math.abs(count), 3);
      BigDecimal value =
          inch
              ? BigDecimal.valueOf(count).multiply(INCH_STEP).multiply(MM_PER_INCH)
              : BigDecimal.valueOf(count, 4);
      return new Wire.Sent(bytes(body + hex(sum(body), 1) + "0d"), value);
    };
  }

  /**
   * Six bytes: aa, a byte with the sign in its high half (b plus, d minus) and the number of digits
   * after the point in its low half, six packed digits with the least significant byte first, 55.
   */
  static Wire packedDigits() {
    return mm -> {
      BigDecimal value = BigDecimal.valueOf(mm).setScale(4, RoundingMode.HALF_EVEN);
      String digits = "%06d".formatted(value.abs().unscaledValue());
      String sign = value.signum() < 0 ? "d4" : "b4";
      String swapped = digits.substring(4) + digits.substring(2, 4) + digits.substring(0, 2);
      return new Wire.Sent(bytes("aa" + sign + swapped + "55"), value);
    };
  }

  /**
   * Four bytes and then silence: a count of 0.0001 mm as a two's complement of three bytes, least
   * significant first, and its CRC-8 (polynomial 07).
   */
  static Wire silent() {
    return mm -> {
      long count = count(mm, 4);
      String low = hex(count & 0xFF, 1) + hex(count >> 8 & 0xFF, 1) + hex(count >> 16 & 0xFF, 1);
      return new Wire.Sent(bytes(low + hex(crc8(low), 1)), BigDecimal.valueOf(count, 4));
    };
  }

  /** The response of Modbus slave 17 to function 4: two registers with a count of 0.0001 mm. */
  static Wire modbus() {
    return mm -> {
      long count = count(mm, 4);
      String body = "110404" + hex(count & 0xFFFFFFFFL, 4);
      int crc = crc16(body);
      String frame = body + hex(crc & 0xFF, 1) + hex(crc >> 8, 1);
      return new Wire.Sent(bytes(frame), BigDecimal.valueOf(count, 4));
    };
  }

  private static long count(double value, int decimals) {
    return BigDecimal.valueOf(value)
        .setScale(decimals, RoundingMode.HALF_EVEN)
        .unscaledValue()
        .longValueExact();
  }

  private static String hex(long value, int bytes) {
    return HexFormat.of().toHexDigits(value, 2 * bytes);
  }

  private static String bytes(String hex) {
    return new String(HexFormat.of().parseHex(hex), StandardCharsets.ISO_8859_1);
  }

  private static int sum(String hex) {
    int sum = 0;
    for (byte value : HexFormat.of().parseHex(hex)) {
      sum += Byte.toUnsignedInt(value);
    }
    return sum & 0xFF;
  }

  private static int crc8(String hex) {
    int register = 0;
    for (byte value : HexFormat.of().parseHex(hex)) {
      register ^= Byte.toUnsignedInt(value);
      for (int bit = 0; bit < 8; bit++) {
        register = (register & 0x80) == 0 ? register << 1 : (register << 1 ^ 0x107) & 0xFF;
      }
    }
    return register;
  }

  /** MODBUS over serial line V1.02, 6.2.2. */
  static int crc16(String hex) {
    int register = 0xFFFF;
    for (byte value : HexFormat.of().parseHex(hex)) {
      register ^= Byte.toUnsignedInt(value);
      for (int bit = 0; bit < 8; bit++) {
        register = (register & 1) == 0 ? register >> 1 : register >> 1 ^ 0xA001;
      }
    }
    return register;
  }
}
