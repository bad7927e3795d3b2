package boreledger.drivers.learn;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.function.ToIntFunction;

/** Puts a binary frame together, byte by byte. */
final class Layout {
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

  Layout hex(int... values) {
    for (int value : values) {
      bytes.write(value);
    }
    return this;
  }

  /** The low bytes of a number, most significant first. */
  Layout big(long number, int count) {
    for (int i = count - 1; i >= 0; i--) {
      bytes.write((int) (number >> (8 * i)));
    }
    return this;
  }

  /** The low bytes of a number, least significant first. */
  Layout little(long number, int count) {
    for (int i = 0; i < count; i++) {
      bytes.write((int) (number >> (8 * i)));
    }
    return this;
  }

  Layout bigFloat(float number) {
    return big(Float.floatToIntBits(number), Float.BYTES);
  }

  Layout littleFloat(float number) {
    return little(Float.floatToIntBits(number), Float.BYTES);
  }

  Layout littleDouble(double number) {
    return little(Double.doubleToLongBits(number), Double.BYTES);
  }

  /** One byte worked out from the bytes so far, beginning at {@code from}. */
  Layout check(int from, ToIntFunction<byte[]> rule) {
    return hex(rule.applyAsInt(from(from)));
  }

  /** A CRC over the bytes so far, beginning at {@code from}, most significant byte first. */
  Layout bigCrc(int from, Crc crc) {
    return big(crc.of(from(from)), crc.width() / 8);
  }

  /** The same, least significant byte first. */
  Layout littleCrc(int from, Crc crc) {
    return little(crc.of(from(from)), crc.width() / 8);
  }

  byte[] frame() {
    return bytes.toByteArray();
  }

  static int sum(byte[] bytes) {
    int sum = 0;
    for (byte b : bytes) {
      sum += b;
    }
    return sum & 0xff;
  }

  static int xor(byte[] bytes) {
    int xor = 0;
    for (byte b : bytes) {
      xor ^= b;
    }
    return xor & 0xff;
  }

  /** Packed decimal digits of a number, most significant first, two to a byte. */
  static long packed(long number) {
    return Long.parseLong(Long.toString(number), 16);
  }

  /** The same bytes with the halves of each swapped. */
  static long nibblesSwapped(long packed) {
    return (packed & 0x0f0f0f0f0f0f0f0fL) << 4 | packed >> 4 & 0x0f0f0f0f0f0f0f0fL;
  }

  private byte[] from(int start) {
    byte[] all = frame();
    return ByteBuffer.allocate(all.length - start).put(all, start, all.length - start).array();
  }
}
