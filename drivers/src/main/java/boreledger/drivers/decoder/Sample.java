package boreledger.drivers.decoder;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.Flag;
import boreledger.drivers.profile.LengthUnit;
import java.util.List;
import java.util.Set;

/**
 * One decoded value, such as +0.0130 mm.
 *
 * @param valueMm the gauge's own value in millimetres: a deviation or a size, as its profile says;
 *     finite
 * @param unit the unit the frame was sent in; an inch value has been converted exactly
 * @param unitSent whether the frame itself named the unit, rather than its profile
 * @param flags what the gauge said of the value besides; often empty, never {@link
 *     Flag#OUT_OF_RANGE}, which gives no sample
 */
public record Sample(
    double tS, Bytes raw, double valueMm, LengthUnit unit, boolean unitSent, Set<Flag> flags)
    implements Decoded {
  /** Takes a copy of the set. */
  public Sample {
    flags = Set.copyOf(flags);
  }

  /** A value of which the gauge said nothing else. */
  public Sample(double tS, Bytes raw, double valueMm, LengthUnit unit, boolean unitSent) {
    this(tS, raw, valueMm, unit, unitSent, Set.of());
  }

  /** What to mind about the value, as plain clauses in a fixed order; often empty. */
  public List<String> cautions() {
    return flags.stream().sorted().map(Flag::meaning).toList();
  }
}
