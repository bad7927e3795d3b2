package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import boreledger.drivers.file.Value;
import java.nio.ByteOrder;

/** The keys of a {@code [decode]} table whose number stands in bytes of the frame. */
final class InBytesKeys {
  private static final int MOST_BYTES = 8;

  private InBytesKeys() {}

  static DecodeSpec read(Table table, String coding, FrameSpec frame) throws FileProblem {
    FramePlace place = new FramePlace(frame);
    int bytes = bytes(table.required("bytes"), coding);
    int at = place.at(table, "at", bytes);
    ByteOrder order = table.required("byte_order").oneOf(NumberKeys.ORDERS);
    return new DecodeSpec.InBytes(at, bytes, order, NumberKeys.read(table, coding, place));
  }

  private static int bytes(Value value, String coding) throws FileProblem {
    int bytes = value.integer(1, MOST_BYTES);
    if (coding.equals("float") && bytes != Float.BYTES && bytes != Double.BYTES) {
      throw value.expected("4 or 8");
    }
    return bytes;
  }
}
