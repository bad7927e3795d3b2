package boreledger.station.rules;

import boreledger.drivers.decoder.Sample;
import boreledger.drivers.pick.PickEvent;
import boreledger.drivers.pick.PickRules;
import boreledger.drivers.profile.GaugeProfile;
import boreledger.drivers.profile.PickSpec;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;

/**
 * How the samples of a pick become a reading. A session says which version of the program took it
 * ({@code program}), and with it which of these were in force.
 */
public enum ReadingRules {
  /** A settled reading was rounded to the gauge's resolution, halves upward. */
  ROUNDED("0.0.0", "a settled reading is the mean of its samples, rounded to the resolution") {
    @Override
    public PickEvent again(GaugeProfile gauge, List<Sample> samples) {
      PickEvent event = PickRules.again(gauge, samples);
      return gauge.pick() instanceof PickSpec.Settle && event instanceof PickEvent.Picked picked
          ? rounded(picked, gauge.resolutionMm())
          : event;
    }
  },

  /** A settled reading keeps every digit of the mean. */
  UNROUNDED("0.1.0", "a settled reading is the mean of its samples, not rounded") {
    @Override
    public PickEvent again(GaugeProfile gauge, List<Sample> samples) {
      return PickRules.again(gauge, samples);
    }
  };

  private final ProgramVersion since;
  private final String words;

  ReadingRules(String since, String words) {
    this.since = ProgramVersion.of(since);
    this.words = words;
  }

  /** Computes a reading from the samples of its pick, oldest first and not empty. */
  public abstract PickEvent again(GaugeProfile gauge, List<Sample> samples);

  /** What they say that others do not, in words. */
  public String words() {
    return words;
  }

  /** Those that this program computes by. */
  public static ReadingRules now() {
    return values()[values().length - 1];
  }

  /**
   * Those that a version of the program computed by; the newest for a version that is newer than
   * all of them, or that no program has.
   */
  public static ReadingRules of(String program) {
    ProgramVersion version = ProgramVersion.of(program);
    return Arrays.stream(values())
        .filter(rules -> version != null && rules.since.compareTo(version) <= 0)
        .reduce((earlier, later) -> later)
        .orElse(now());
  }

  private static PickEvent rounded(PickEvent.Picked picked, double resolutionMm) {
    BigDecimal stepMm = BigDecimal.valueOf(resolutionMm);
    BigDecimal steps = BigDecimal.valueOf(picked.valueMm()).divide(stepMm, 0, RoundingMode.HALF_UP);
    return new PickEvent.Picked(
        picked.tS(),
        steps.multiply(stepMm).doubleValue(),
        picked.standardUncertaintyMm(),
        picked.samples(),
        picked.cautions());
  }
}
