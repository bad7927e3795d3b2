package boreledger.drivers.profile;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.Table;
import java.util.EnumMap;
import java.util.Map;

/** A profile's {@code [flags]} table, and the unit bits that {@code [decode]} may name instead. */
final class FlagsTable {
  private FlagsTable() {}

  /**
   * @param decode null when its kind of decoding has no unit bits of its own
   */
  static FlagSpec read(Table file, Table decode, FrameSpec frame) throws FileProblem {
    FramePlace place = new FramePlace(frame);
    BitTest inch = decode == null ? null : place.bitTest(decode, "inch");
    BitTest millimetre = decode == null ? null : place.bitTest(decode, "millimetre");
    if (!file.has("flags")) {
      return new FlagSpec(Map.of(), new UnitBits(inch, millimetre));
    }
    Table table = file.table("flags");
    if (inch != null && table.has("inch")) {
      throw table.required("inch").problem("inch stands in [decode] and in [flags]");
    }
    Map<Flag, BitTest> raised = new EnumMap<>(Flag.class);
    for (Flag flag : Flag.values()) {
      BitTest test = place.bitTest(table, flag.key());
      if (test != null) {
        raised.put(flag, test);
      }
    }
    BitTest flagged = place.bitTest(table, "inch");
    return new FlagSpec(raised, new UnitBits(inch == null ? flagged : inch, millimetre));
  }
}
