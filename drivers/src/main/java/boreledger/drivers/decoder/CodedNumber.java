package boreledger.drivers.decoder;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.NumberCoding;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.ByteBuffer;

/**
 * Numbers as bytes, the most significant one first.
 *
 * <pre>
 *   integer, signed            ff ff d8 f0      -10000
 *   integer, not signed        27 10             10000
 *   float (IEEE 754)           3d cc cc cd       0.100000001490116...
 *   packed digits, high first  01 23 45          12345
 *   packed digits, low first   10 32 54          12345
 * </pre>
 */
final class CodedNumber {
  private CodedNumber() {}

  /** The number, exactly. */
  static BigDecimal read(NumberCoding coding, Bytes bytes) throws Unreadable {
    if (coding instanceof NumberCoding.Whole whole) {
      byte[] content = bytes.toArray();
      return new BigDecimal(whole.signed() ? new BigInteger(content) : new BigInteger(1, content));
    }
    if (coding instanceof NumberCoding.PackedDigits packed) {
      return packedDigits(packed, bytes);
    }
    return floating(bytes);
  }

  private static BigDecimal packedDigits(NumberCoding.PackedDigits packed, Bytes bytes)
      throws Unreadable {
    StringBuilder digits = new StringBuilder();
    for (int i = 0; i < bytes.size(); i++) {
      int high = digit(bytes, bytes.at(i) >>> 4);
      int low = digit(bytes, bytes.at(i) & 0x0F);
      digits.append(packed.highNibbleFirst() ? high : low);
      digits.append(packed.highNibbleFirst() ? low : high);
    }
    return new BigDecimal(digits.toString());
  }

  private static int digit(Bytes bytes, int nibble) throws Unreadable {
    if (nibble > 9) {
      throw new Unreadable(
          bytes + " holds the nibble " + Integer.toHexString(nibble) + ", which is no digit");
    }
    return nibble;
  }

  private static BigDecimal floating(Bytes bytes) throws Unreadable {
    ByteBuffer buffer = ByteBuffer.wrap(bytes.toArray());
    double value = bytes.size() == Float.BYTES ? buffer.getFloat() : buffer.getDouble();
    if (Double.isNaN(value)) {
      throw new Unreadable(bytes + " means not a number");
    }
    if (Double.isInfinite(value)) {
      throw new Unreadable(bytes + " means " + (value < 0 ? "minus infinity" : "infinity"));
    }
    return new BigDecimal(value);
  }
}
