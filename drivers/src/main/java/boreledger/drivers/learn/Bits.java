package boreledger.drivers.learn;

import boreledger.drivers.line.Bytes;
import java.util.List;
import java.util.Locale;

/**
 * Bits of one byte that change exactly when something else does.
 *
 * @param at the byte, from the frame's start
 * @param mask which bits
 * @param set how they are set when it holds
 * @param unset how they are set when it does not
 */
record Bits(int at, int mask, int set, int unset) {
  /**
   * The bits of a byte that tell where something holds.
   *
   * @param own bits of that byte that belong to the number and are left out
   * @param holds for each frame whether it holds; null where it does not matter
   * @return null when no bit tells
   */
  static Bits telling(List<Bytes> frames, int at, int own, List<Boolean> holds) {
    int everSet = 0;
    int neverSet = 0;
    int same = 0xff & ~own;
    for (int bit = 1; bit < 0x100; bit <<= 1) {
      boolean direct = tells(frames, at, bit, holds, true);
      boolean inverse = tells(frames, at, bit, holds, false);
      everSet |= direct ? bit : 0;
      neverSet |= inverse ? bit : 0;
    }
    int mask = (everSet | neverSet) & same;
    return mask == 0 ? null : new Bits(at, mask, everSet & mask, neverSet & mask);
  }

  /** The same answer with a wider mask, its further bits as they stand in a frame. */
  Bits widened(int wider, Bytes frame) {
    int rest = frame.at(at) & wider & ~mask;
    return new Bits(at, mask | wider, set | rest, unset | rest);
  }

  /** As a profile's bit test. */
  String toml(int frameLength) {
    return test(frameLength, set);
  }

  /** As the test of the opposite. */
  String oppositeToml(int frameLength) {
    return test(frameLength, unset);
  }

  private String test(int frameLength, int equals) {
    return String.format(
        Locale.ROOT, "{ at = %d, mask = 0x%02X, equals = 0x%02X }", at - frameLength, mask, equals);
  }

  private static boolean tells(
      List<Bytes> frames, int at, int bit, List<Boolean> holds, boolean direct) {
    for (int i = 0; i < frames.size(); i++) {
      boolean isSet = (frames.get(i).at(at) & bit) != 0;
      if (holds.get(i) != null && (isSet == direct) != holds.get(i)) {
        return false;
      }
    }
    return true;
  }
}
