package boreledger.drivers.profile;

import java.util.Map;

/**
 * Bits of a frame that say something of its value.
 *
 * @param raised for each flag that the profile gives, the bits that raise it
 * @param unit the bits that name the value's unit
 */
public record FlagSpec(Map<Flag, BitTest> raised, UnitBits unit) {
  /** No bits at all. */
  public static final FlagSpec NONE = new FlagSpec(Map.of(), UnitBits.NONE);

  /** Takes a copy of the map. */
  public FlagSpec {
    raised = Map.copyOf(raised);
  }
}
