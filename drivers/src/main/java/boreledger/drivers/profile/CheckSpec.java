package boreledger.drivers.profile;

import boreledger.drivers.line.Bytes;
import java.nio.ByteOrder;

/**
 * A check that a frame carries about itself.
 *
 * @param sum how it is computed
 * @param from the first byte covered, counted from 0; negative from the frame's end
 * @param to the first byte not covered any more, counted in the same way
 * @param at the first byte of the check itself, counted in the same way
 * @param asHexText whether it stands there as hexadecimal digits, two to the byte
 * @param byteOrder which of its bytes comes first
 */
public record CheckSpec(Sum sum, int from, int to, int at, boolean asHexText, ByteOrder byteOrder) {
  /** How a check is computed. */
  public sealed interface Sum {
    /** Its name in a profile. */
    String kind();

    /** The number of bytes that it has. */
    int bytes();

    /** The check of the bytes. */
    long of(Bytes covered);
  }

  /** All bytes added, without carry beyond eight bits. */
  public record Sum8() implements Sum {
    @Override
    public String kind() {
      return "sum8";
    }

    @Override
    public int bytes() {
      return 1;
    }

    @Override
    public long of(Bytes covered) {
      int sum = 0;
      for (int i = 0; i < covered.size(); i++) {
        sum += covered.at(i);
      }
      return sum & 0xFF;
    }
  }

  /** All bytes combined by exclusive or. */
  public record Xor8() implements Sum {
    @Override
    public String kind() {
      return "xor8";
    }

    @Override
    public int bytes() {
      return 1;
    }

    @Override
    public long of(Bytes covered) {
      int sum = 0;
      for (int i = 0; i < covered.size(); i++) {
        sum ^= covered.at(i);
      }
      return sum;
    }
  }

  /** A cyclic redundancy check. */
  public record Cyclic(Crc crc) implements Sum {
    @Override
    public String kind() {
      return "crc";
    }

    @Override
    public int bytes() {
      return (crc.width() + 7) / 8;
    }

    @Override
    public long of(Bytes covered) {
      return crc.of(covered);
    }
  }

  /** The number of bytes that it takes up in the frame. */
  public int bytesInFrame() {
    return asHexText ? 2 * sum.bytes() : sum.bytes();
  }
}
