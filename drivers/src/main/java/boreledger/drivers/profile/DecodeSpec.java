package boreledger.drivers.profile;

import java.math.BigDecimal;
import java.nio.ByteOrder;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How a frame becomes a value. */
public sealed interface DecodeSpec {
  /** Whether the frame holds bits rather than text. */
  default boolean isBinary() {
    return false;
  }

  /**
   * A regular expression that is searched for in the frame's ASCII text, with a group {@code value}
   * and perhaps a group {@code unit}, a group {@code negative}, which turns the value's sign when
   * it is not empty, and groups named like a {@link Flag}, which raise it when they are not empty.
   * It must be found once and no more; {@code ^} and {@code $} make it cover the whole frame.
   */
  record ByPattern(Pattern pattern) implements DecodeSpec {
    /** Whether the pattern has a group of this name. */
    public boolean hasGroup(String group) {
      // A matcher answers for a group's name only after a match; the empty alternative gives one.
      Matcher matcher = Pattern.compile("|" + pattern.pattern()).matcher("");
      matcher.find();
      try {
        matcher.start(group);
        return true;
      } catch (IllegalArgumentException e) {
        return false;
      }
    }
  }

  /**
   * The frame is a numeric response of IEEE 488.2 in the form NR1, NR2 or NR3.
   *
   * @param scale what 1 is worth in the profile's unit; not 0
   */
  record Ieee488(BigDecimal scale) implements DecodeSpec {}

  /**
   * A number stands in some bytes of the frame.
   *
   * @param at its first byte, counted from 0; negative from the frame's end
   * @param bytes how many bytes, 1 to 8
   * @param byteOrder which of them is the most significant one
   */
  record InBytes(int at, int bytes, ByteOrder byteOrder, BinaryNumber number)
      implements DecodeSpec {
    @Override
    public boolean isBinary() {
      return true;
    }
  }

  /**
   * A number stands in registers of a Modbus slave, and the frame is its response.
   *
   * @param query what the slave is asked for
   * @param wordOrder which register is the most significant one; bytes in a register are always
   *     most significant first (MODBUS Application Protocol V1.1b3, 4.2)
   */
  record InRegisters(RegisterQuery query, ByteOrder wordOrder, BinaryNumber number)
      implements DecodeSpec {
    @Override
    public boolean isBinary() {
      return true;
    }
  }
}
