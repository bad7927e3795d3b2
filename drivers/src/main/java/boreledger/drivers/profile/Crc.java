package boreledger.drivers.profile;

import boreledger.drivers.line.Bytes;

/**
 * A cyclic redundancy check in the usual parametric form: the message as a polynomial over GF(2) is
 * divided by another, and the remainder is the check.
 *
 * @param width the remainder's bits, 8 to 32
 * @param polynomial the divisor without its highest term, the highest remaining term in the highest
 *     bit
 * @param init what the register holds at first, not reflected
 * @param reflectIn whether each byte is taken least significant bit first
 * @param reflectOut whether the remainder is turned end for end
 * @param xorOut what is added to the remainder at last
 */
public record Crc(
    int width, long polynomial, long init, boolean reflectIn, boolean reflectOut, long xorOut) {
  /** That of Modbus RTU (MODBUS over serial line V1.02, 6.2.2). */
  public static final Crc MODBUS = new Crc(16, 0x8005, 0xFFFF, true, true, 0);

  /** The check of the bytes. */
  public long of(Bytes bytes) {
    long register = init;
    for (int i = 0; i < bytes.size(); i++) {
      register = take(register, bytes.at(i));
    }
    long remainder = reflectOut ? Long.reverse(register) >>> (64 - width) : register;
    return remainder ^ xorOut;
  }

  private long take(long register, int value) {
    int ordered = reflectIn ? Integer.reverse(value) >>> 24 : value;
    long next = register ^ ((long) ordered << (width - 8));
    for (int bit = 0; bit < 8; bit++) {
      boolean carry = (next >>> (width - 1) & 1) != 0;
      next = carry ? next << 1 ^ polynomial : next << 1;
    }
    return next & mask();
  }

  private long mask() {
    return (1L << width) - 1;
  }
}
