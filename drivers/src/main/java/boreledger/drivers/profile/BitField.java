package boreledger.drivers.profile;

/**
 * A small number that stands in some bits of one byte of a frame.
 *
 * @param at the byte, counted from 0; negative from the frame's end
 * @param mask the bits, side by side; 1 to 255
 */
public record BitField(int at, int mask) {
  /** The number in that byte, 0 to 255. */
  public int in(int value) {
    return (value & mask) >>> Integer.numberOfTrailingZeros(mask);
  }
}
