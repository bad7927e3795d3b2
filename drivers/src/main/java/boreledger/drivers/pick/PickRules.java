package boreledger.drivers.pick;

import boreledger.drivers.decoder.Sample;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.PickSpec;
import java.util.List;

/** Makes the pick rule that a profile asks for. */
public final class PickRules {
  private PickRules() {}

  /**
   * A new rule, at the start of a stream.
   *
   * @param window what the readings of a session could be, by which {@code settle} and {@code rock}
   *     tell free air from a bore; null when not known. {@code press} takes every frame.
   */
  public static PickRule of(GaugeProfile profile, PlausibleWindow window) {
    return new CautionedRule(plain(profile, window));
  }

  static PickRule plain(GaugeProfile profile, PlausibleWindow window) {
    PickSpec spec = profile.pick();
    if (spec instanceof PickSpec.Press press) {
      return new PressRule(press);
    }
    if (spec instanceof PickSpec.Settle settle) {
      return new SettleRule(settle, window);
    }
    PickSpec.Rock rock = (PickSpec.Rock) spec;
    return new RockRule(
        rock, window, new RockPick(rock, profile.resolutionMm()), profile.resolutionMm());
  }

  /**
   * Computes again what the samples of one pick give, without asking where the pick begins and
   * ends: for a {@link PickEvent.Picked} it gives its value, time and uncertainty again, for
   * whoever checks a kept reading. Cautions that came from earlier samples are not repeated.
   *
   * @param samples the samples of one pick event, oldest first; not empty
   */
  public static PickEvent again(GaugeProfile profile, List<Sample> samples) {
    return CautionedRule.withCautionsOfSamples(plainAgain(profile, samples));
  }

  private static PickEvent plainAgain(GaugeProfile profile, List<Sample> samples) {
    PickSpec spec = profile.pick();
    if (spec instanceof PickSpec.Press) {
      return PressRule.pick(samples.get(samples.size() - 1), List.of());
    }
    if (spec instanceof PickSpec.Settle) {
      return SettleRule.pick(samples);
    }
    return new RockPick((PickSpec.Rock) spec, profile.resolutionMm()).of(samples);
  }
}
