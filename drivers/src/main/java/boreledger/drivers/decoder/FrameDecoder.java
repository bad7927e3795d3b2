package boreledger.drivers.decoder;

import boreledger.drivers.framer.FrameEvent;
import boreledger.drivers.profile.Flag;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.LengthUnit;
import boreledger.drivers.profile.PickSpec;
import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Checks a frame, looks at its flags, reads its number and makes it millimetres.
 *
 * <ul>
 *   <li>A failed check rejects the frame, and so does the flag of a value out of range: whatever
 *       stands in the frame then is no measured value.
 *   <li>A held value rejects the frame where samples follow each other ({@code settle}, {@code
 *       rock}): it stands still although the gauge moves, and would pass for a steady reading. With
 *       {@code press} a person sent it on purpose, perhaps from a gauge that holds its smallest
 *       value, so it is a sample with a caution.
 *   <li>A low battery is a caution.
 *   <li>Inches become millimetres exactly, before the one rounding to a double; a length beyond a
 *       kilometre is rejected.
 * </ul>
 */
final class FrameDecoder implements Decoder {
  private static final BigDecimal LONGEST_MM = new BigDecimal(1_000_000);

  private final NumberReader numbers;
  private final FlagReader flags;
  private final List<FrameCheck> checks;
  private final LengthUnit unsent;
  private final boolean heldIsRefused;

  FrameDecoder(GaugeProfile profile, NumberReader numbers) {
    this.numbers = numbers;
    flags = new FlagReader(profile.flags());
    checks = profile.checks().stream().map(FrameCheck::new).toList();
    unsent = profile.unit();
    heldIsRefused = !(profile.pick() instanceof PickSpec.Press);
  }

  @Override
  public Decoded decode(FrameEvent.Frame frame) {
    try {
      return sample(frame);
    } catch (Unreadable e) {
      return new Rejected(frame.tS(), frame.raw(), e.getMessage());
    }
  }

  private Sample sample(FrameEvent.Frame frame) throws Unreadable {
    FrameBytes bytes = new FrameBytes(frame.raw());
    for (FrameCheck check : checks) {
      check.verify(bytes);
    }
    Set<Flag> raised = flags.raised(bytes);
    refuse(raised);
    LengthUnit bitUnit = flags.unit(bytes);
    SentNumber sent = numbers.read(frame, bitUnit);
    raised.addAll(sent.flags());
    refuse(raised);
    LengthUnit unit = unit(bitUnit, sent);
    boolean unitSent = bitUnit != null || sent.unit() != null;
    return new Sample(frame.tS(), frame.raw(), mm(unit, sent), unit, unitSent, raised);
  }

  private void refuse(Set<Flag> raised) throws Unreadable {
    Set<Flag> refused = EnumSet.of(Flag.OUT_OF_RANGE);
    if (heldIsRefused) {
      refused.add(Flag.HOLD);
    }
    for (Flag flag : raised) {
      if (refused.contains(flag)) {
        throw new Unreadable(flag.meaning());
      }
    }
  }

  private LengthUnit unit(LengthUnit bitUnit, SentNumber sent) throws Unreadable {
    if (bitUnit != null && sent.unit() != null && bitUnit != sent.unit()) {
      throw new Unreadable(
          "its text says " + sent.unit().symbol() + ", its bits say " + bitUnit.symbol());
    }
    if (bitUnit != null) {
      return bitUnit;
    }
    return sent.unit() == null ? unsent : sent.unit();
  }

  private static double mm(LengthUnit unit, SentNumber sent) throws Unreadable {
    BigDecimal valueMm = unit.toMm(sent.number());
    if (valueMm.abs().compareTo(LONGEST_MM) > 0) {
      throw new Unreadable(sent.shown() + " is beyond a kilometre");
    }
    // Adding zero makes a zero of what is too small for a double, and never a negative one.
    return valueMm.doubleValue() + 0.0;
  }
}
