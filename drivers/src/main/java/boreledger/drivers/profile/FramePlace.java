package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;

/**
 * Places in a frame as a profile gives them: bytes counted from 0, or negative from the frame's
 * end. What the longest frame has no room for is refused.
 */
final class FramePlace {
  private final int maxBytes;

  FramePlace(FrameSpec frame) {
    maxBytes = frame.maxBytes();
  }

  /** Where so many bytes stand. */
  int at(Table table, String key, int bytes) throws FileProblem {
    Value value = table.required(key);
    int at = value.integer(-maxBytes, maxBytes - 1);
    int room = at < 0 ? -at : maxBytes - at;
    if (room < bytes) {
      throw value.expected("a place with room for " + bytes + " bytes, it has " + room);
    }
    return at;
  }

  /** A boundary between bytes, such as the end of a range. */
  int boundary(Table table, String key) throws FileProblem {
    return table.required(key).integer(-maxBytes, maxBytes);
  }

  /** The bit test of a key, or null when it is left out. */
  BitTest bitTest(Table parent, String key) throws FileProblem {
    if (!parent.has(key)) {
      return null;
    }
    Table table = parent.table(key);
    int at = at(table, "at", 1);
    int mask = table.required("mask").integer(1, 255);
    if (!table.has("equals")) {
      return new BitTest(at, mask, mask);
    }
    Value equals = table.required("equals");
    int expected = equals.integer(0, 255);
    if ((expected & ~mask) != 0) {
      throw equals.expected("no bits outside the mask " + mask);
    }
    return new BitTest(at, mask, expected);
  }

  /** The bit field of a key, or null when it is left out. */
  BitField bitField(Table parent, String key) throws FileProblem {
    if (!parent.has(key)) {
      return null;
    }
    Table table = parent.table(key);
    int at = at(table, "at", 1);
    Value mask = table.required("mask");
    int bits = mask.integer(1, 255);
    int run = (bits >>> Integer.numberOfTrailingZeros(bits)) + 1;
    if ((run & (run - 1)) != 0) {
      throw mask.expected("bits side by side, such as 0x0F");
    }
    return new BitField(at, bits);
  }
}
