package boreledger.drivers.decoder;

import boreledger.drivers.profile.BitTest;
import boreledger.drivers.profile.Flag;
import boreledger.drivers.profile.FlagSpec;
import boreledger.drivers.profile.LengthUnit;
import boreledger.drivers.profile.UnitBits;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/** Reads what bits of a frame say of its value. */
final class FlagReader {
  private final FlagSpec spec;

  FlagReader(FlagSpec spec) {
    this.spec = spec;
  }

  /** The flags raised, in a set that may be added to. */
  Set<Flag> raised(FrameBytes frame) throws Unreadable {
    Set<Flag> raised = EnumSet.noneOf(Flag.class);
    for (Map.Entry<Flag, BitTest> each : spec.raised().entrySet()) {
      if (frame.meets(each.getValue())) {
        raised.add(each.getKey());
      }
    }
    return raised;
  }

  /** The unit that the bits name; null when the profile gives no such bits. */
  LengthUnit unit(FrameBytes frame) throws Unreadable {
    UnitBits bits = spec.unit();
    if (bits.inch() == null && bits.millimetre() == null) {
      return null;
    }
    boolean inch = frame.meets(bits.inch());
    boolean millimetre = frame.meets(bits.millimetre());
    if (bits.inch() != null && bits.millimetre() != null && inch == millimetre) {
      throw new Unreadable("its bits name " + (inch ? "both units" : "neither unit"));
    }
    return inch || bits.inch() == null && !millimetre ? LengthUnit.IN : LengthUnit.MM;
  }
}
