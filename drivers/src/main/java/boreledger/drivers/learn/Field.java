package boreledger.drivers.learn;

import boreledger.drivers.line.Bytes;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.util.Locale;

/**
 * Some bytes of a frame read as one number.
 *
 * @param at the first byte, from the frame's start
 * @param size how many bytes
 * @param order which byte is the most significant one
 * @param strip bits of the most significant byte that are no part of the number; 0 for none
 */
record Field(int at, int size, Order order, Coding coding, int strip) {
  /** The order of a number's bytes. */
  enum Order {
    BIG,
    LITTLE,
    /** Registers least significant first, the bytes in each most significant first. */
    WORDS_LITTLE;

    String toml() {
      return this == BIG ? "big" : "little";
    }
  }

  /** How the number is written. */
  enum Coding {
    SIGNED("two's complement"),
    UNSIGNED("whole number"),
    FLOAT("floating-point number"),
    DIGITS("packed digits"),
    DIGITS_LOW_FIRST("packed digits, low nibble first");

    private final String words;

    Coding(String words) {
      this.words = words;
    }

    boolean isDigits() {
      return this == DIGITS || this == DIGITS_LOW_FIRST;
    }

    /** Whether the number itself says its sign. */
    boolean hasSign() {
      return this == SIGNED || this == FLOAT;
    }
  }

  /** The number in a frame; null when the bytes hold none. */
  BigDecimal read(Bytes frame) {
    byte[] own = new byte[size];
    for (int i = 0; i < size; i++) {
      own[i] = (byte) frame.at(index(i));
    }
    own[0] &= (byte) ~strip;
    return switch (coding) {
      case SIGNED -> new BigDecimal(new BigInteger(own));
      case UNSIGNED -> new BigDecimal(new BigInteger(1, own));
      case FLOAT -> floating(own);
      default -> digits(own);
    };
  }

  /** Where its bytes stand, the most significant one first. */
  int index(int rank) {
    return switch (order) {
      case BIG -> at + rank;
      case LITTLE -> at + size - 1 - rank;
      case WORDS_LITTLE -> at + size - 2 - rank + 2 * (rank % 2);
    };
  }

  /** Where its least significant byte stands. */
  int last() {
    return index(size - 1);
  }

  /** Which bits of a byte of the frame belong to the number. */
  int ownBits(int index) {
    if (index < at || index >= at + size) {
      return 0;
    }
    return index == index(0) ? 0xff & ~strip : 0xff;
  }

  /** The largest number that it can hold. */
  BigDecimal capacity() {
    return coding.isDigits()
        ? BigDecimal.TEN.pow(2 * size)
        : new BigDecimal(BigInteger.ONE.shiftLeft(8 * size));
  }

  /** The decode keys that say where and what it is, in a frame of such a length. */
  String toml(int frameLength) {
    String kind =
        coding.isDigits() ? "packed-digits" : coding == Coding.FLOAT ? "float" : "integer";
    String more =
        switch (coding) {
          case SIGNED -> "\nsigned = true";
          case UNSIGNED -> "\nsigned = false";
          case DIGITS -> "\nnibble_order = \"high-first\"";
          case DIGITS_LOW_FIRST -> "\nnibble_order = \"low-first\"";
          default -> "";
        };
    return String.format(
        Locale.ROOT,
        "kind = \"%s\"%nat = %d%nbytes = %d%nbyte_order = \"%s\"%s".replace("%n", "\n"),
        kind,
        at - frameLength,
        size,
        order.toml(),
        more);
  }

  String words() {
    return String.format(
        Locale.ROOT,
        "%s in %d byte%s from byte %d, %s first",
        coding.words,
        size,
        size == 1 ? "" : "s",
        at,
        order == Order.BIG ? "most significant" : "least significant");
  }

  private BigDecimal floating(byte[] own) {
    ByteBuffer buffer = ByteBuffer.wrap(own);
    double number = size == Float.BYTES ? buffer.getFloat() : buffer.getDouble();
    return Double.isFinite(number) ? new BigDecimal(number) : null;
  }

  private BigDecimal digits(byte[] own) {
    StringBuilder digits = new StringBuilder();
    for (byte each : own) {
      int high = each >> 4 & 0xf;
      int low = each & 0xf;
      if (high > 9 || low > 9) {
        return null;
      }
      digits.append(coding == Coding.DIGITS ? high : low);
      digits.append(coding == Coding.DIGITS ? low : high);
    }
    return new BigDecimal(digits.toString());
  }
}
