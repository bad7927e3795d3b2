package boreledger.drivers.decoder;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.BinaryNumber;
import boreledger.drivers.profile.BitField;
import boreledger.drivers.profile.BitTest;
import boreledger.drivers.profile.LengthUnit;
import boreledger.drivers.profile.UnitBits;
import java.math.BigDecimal;
import java.util.Set;

/**
 * Reads a number from bytes of a frame, whatever the kind of frame.
 *
 * <pre>
 * at = 1, bytes = 3, byte_order = "big", scale = 0.001,
 * negative = { at = 1, mask = 0x80 }, inch = { at = 4, mask = 0x01 }
 *
 *   offset  0   1  2  3   4  5
 *   byte    02  80 30 39  00 0d     the sign bit is no part of 00 30 39, which is 12345: -12.345 mm
 * </pre>
 */
final class BinaryReader {
  private static final int MOST_DECIMALS = 9;

  private final BinaryNumber spec;
  private final UnitBits unitBits;

  BinaryReader(BinaryNumber spec, UnitBits unitBits) {
    this.spec = spec;
    this.unitBits = unitBits;
  }

  /**
   * The number in the given bytes of the frame.
   *
   * @param indices where its bytes stand, the most significant one first
   */
  SentNumber read(FrameBytes frame, int[] indices, LengthUnit bitUnit) throws Unreadable {
    Bytes own = pick(withoutMarks(frame), indices);
    BigDecimal count = CodedNumber.read(spec.coding(), own);
    BigDecimal sized =
        spec.decimalPosition() == null ? scaled(count, bitUnit) : placed(count, frame);
    BigDecimal number = frame.meets(spec.negative()) ? sized.negate() : sized;
    return new SentNumber(own + " for " + plain(number), number, null, Set.of());
  }

  private BigDecimal scaled(BigDecimal count, LengthUnit bitUnit) {
    return count.multiply(bitUnit == LengthUnit.IN ? spec.inchScale() : spec.scale());
  }

  private BigDecimal placed(BigDecimal count, FrameBytes frame) throws Unreadable {
    BitField position = spec.decimalPosition();
    int decimals = position.in(frame.at(position.at()));
    if (decimals > MOST_DECIMALS) {
      throw new Unreadable(decimals + " digits after the point, expected at most " + MOST_DECIMALS);
    }
    return count.scaleByPowerOfTen(-decimals);
  }

  /** The frame's bytes without the bits that say something else than the number. */
  private byte[] withoutMarks(FrameBytes frame) throws Unreadable {
    byte[] bytes = frame.raw().toArray();
    for (BitTest test : new BitTest[] {spec.negative(), unitBits.inch(), unitBits.millimetre()}) {
      if (test != null) {
        bytes[frame.index(test.at(), 1)] &= (byte) ~test.mask();
      }
    }
    if (spec.decimalPosition() != null) {
      bytes[frame.index(spec.decimalPosition().at(), 1)] &= (byte) ~spec.decimalPosition().mask();
    }
    return bytes;
  }

  private static Bytes pick(byte[] bytes, int[] indices) {
    byte[] own = new byte[indices.length];
    for (int i = 0; i < indices.length; i++) {
      own[i] = bytes[indices[i]];
    }
    return Bytes.of(own);
  }

  private static String plain(BigDecimal number) {
    return String.valueOf(number.doubleValue());
  }
}
