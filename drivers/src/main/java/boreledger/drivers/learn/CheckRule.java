package boreledger.drivers.learn;

import boreledger.drivers.line.Bytes;
import java.util.List;
import java.util.Locale;

/** A way of computing a check over bytes, as profiles name it. */
sealed interface CheckRule {
  /** Every way that is tried: sums, then the common cyclic redundancy checks. */
  List<CheckRule> ALL =
      List.of(
          new Sum8(),
          new Xor8(),
          new Cyclic(8, 0x07, 0, false, 0),
          new Cyclic(8, 0x07, 0xff, false, 0),
          new Cyclic(8, 0x31, 0, true, 0),
          new Cyclic(8, 0x31, 0xff, false, 0),
          new Cyclic(16, 0x8005, 0xffff, true, 0),
          new Cyclic(16, 0x8005, 0, true, 0),
          new Cyclic(16, 0x1021, 0xffff, false, 0),
          new Cyclic(16, 0x1021, 0, false, 0),
          new Cyclic(16, 0x1021, 0, true, 0),
          new Cyclic(16, 0x1021, 0xffff, true, 0xffff),
          new Cyclic(32, 0x04c11db7L, 0xffffffffL, true, 0xffffffffL));

  /** The number of bytes it has. */
  int bytes();

  /** The check of the bytes from {@code from} up to, not including, {@code to}. */
  long of(Bytes frame, int from, int to);

  /** Its keys in a profile's {@code [[check]]} table. */
  String toml();

  /** All bytes added, the lowest eight bits of it. */
  record Sum8() implements CheckRule {
    @Override
    public int bytes() {
      return 1;
    }

    @Override
    public long of(Bytes frame, int from, int to) {
      int sum = 0;
      for (int i = from; i < to; i++) {
        sum += frame.at(i);
      }
      return sum & 0xff;
    }

    @Override
    public String toml() {
      return "kind = \"sum8\"";
    }
  }

  /** All bytes combined by exclusive or. */
  record Xor8() implements CheckRule {
    @Override
    public int bytes() {
      return 1;
    }

    @Override
    public long of(Bytes frame, int from, int to) {
      int sum = 0;
      for (int i = from; i < to; i++) {
        sum ^= frame.at(i);
      }
      return sum;
    }

    @Override
    public String toml() {
      return "kind = \"xor8\"";
    }
  }

  /** A cyclic redundancy check, in the usual parameters. */
  record Cyclic(int width, long polynomial, long init, boolean reflected, long xorOut)
      implements CheckRule {
    @Override
    public int bytes() {
      return width / 8;
    }

    @Override
    public long of(Bytes frame, int from, int to) {
      long register = init;
      for (int i = from; i < to; i++) {
        int value = frame.at(i);
        int ordered = reflected ? Integer.reverse(value) >>> 24 : value;
        register ^= (long) ordered << (width - 8);
        for (int bit = 0; bit < 8; bit++) {
          boolean carry = (register >>> (width - 1) & 1) != 0;
          register = (register << 1 ^ (carry ? polynomial : 0)) & (1L << width) - 1;
        }
      }
      return (reflected ? Long.reverse(register) >>> (64 - width) : register) ^ xorOut;
    }

    @Override
    public String toml() {
      String form =
          "kind = \"crc\"%nwidth = %d%npolynomial = 0x%X%ninit = 0x%X%n"
              + "reflect_in = %b%nreflect_out = %b%nxor_out = 0x%X";
      Object[] values = {width, polynomial, init, reflected, reflected, xorOut};
      return String.format(Locale.ROOT, form.replace("%n", "\n"), values);
    }
  }
}
