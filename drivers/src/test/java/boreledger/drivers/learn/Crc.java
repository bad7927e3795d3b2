package boreledger.drivers.learn;

/**
 * A cyclic redundancy check in the parameters of R. Williams, "A painless guide to CRC error
 * detection algorithms" (1993), worked out bit by bit.
 */
record Crc(int width, int polynomial, int start, boolean reflected, int end) {
  /** CRC-16 of the Modbus serial line guide V1.02: its text's example is in the corpus test. */
  static final Crc MODBUS = new Crc(16, 0x8005, 0xffff, true, 0);

  /** The polynomial of ITU-T V.41, started with ones. */
  static final Crc CCITT = new Crc(16, 0x1021, 0xffff, false, 0);

  /** The polynomial of ITU-T I.432.1 (header error control), without its final exclusive-or. */
  static final Crc EIGHT = new Crc(8, 0x07, 0, false, 0);

  int of(byte[] bytes) {
    int mask = (1 << width) - 1;
    int register = start;
    for (byte b : bytes) {
      register ^= (reflected ? reversed(b & 0xff, 8) : b & 0xff) << (width - 8);
      for (int bit = 0; bit < 8; bit++) {
        boolean carry = (register >> (width - 1) & 1) == 1;
        register = (register << 1 ^ (carry ? polynomial : 0)) & mask;
      }
    }
    return (reflected ? reversed(register, width) : register) ^ end;
  }

  private static int reversed(int value, int width) {
    return Integer.reverse(value) >>> (32 - width);
  }
}
