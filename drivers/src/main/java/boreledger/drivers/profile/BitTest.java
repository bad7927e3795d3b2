package boreledger.drivers.profile;

/**
 * A question to one byte of a frame: are the bits of the mask set as {@code equals} says?
 *
 * @param at the byte, counted from 0; negative from the frame's end
 * @param mask which bits count; 1 to 255
 * @param equals how they must be set; no bits outside the mask
 */
public record BitTest(int at, int mask, int equals) {
  /** The answer for that byte, 0 to 255. */
  public boolean isMetBy(int value) {
    return (value & mask) == equals;
  }
}
