package boreledger.drivers.profile;

/** How a number stands in bytes that are given with the most significant one first. */
public sealed interface NumberCoding {
  /**
   * A whole number.
   *
   * @param signed whether it is a two's complement
   */
  record Whole(boolean signed) implements NumberCoding {}

  /** A binary number of IEEE 754, of 4 or 8 bytes. */
  record Floating() implements NumberCoding {}

  /**
   * Two decimal digits to the byte.
   *
   * @param highNibbleFirst whether the high four bits hold the more significant digit
   */
  record PackedDigits(boolean highNibbleFirst) implements NumberCoding {}
}
