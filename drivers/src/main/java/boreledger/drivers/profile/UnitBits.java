package boreledger.drivers.profile;

/**
 * Bits that name the unit of a frame's value. Where both are given exactly one must be met; where
 * only one is given, it not being met means the other unit.
 *
 * @param inch null when not given
 * @param millimetre null when not given
 */
public record UnitBits(BitTest inch, BitTest millimetre) {
  /** No bits: values have the unit sent as text, or the profile's. */
  public static final UnitBits NONE = new UnitBits(null, null);
}
