package boreledger.station.session;

import boreledger.drivers.profile.Reads;
import boreledger.station.job.Job;
import java.util.Locale;
import java.util.Optional;

/**
 * The values that a reading can have at all, in the gauge's own millimetres. They only catch what
 * cannot be a measurement of the thing; a maker's limit never refuses a reading.
 *
 * @param what what is measured, such as {@code bore}
 * @param lowMm the smallest value
 * @param highMm the largest value
 * @param offsetMm what is added to a value to give the size that messages show
 */
public record Plausible(String what, double lowMm, double highMm, double offsetMm) {
  private static final String BORE = "bore";
  private static final String GAP = "gap";
  private static final double LARGEST_GAP_MM = 5;
  private static final double PUSHED_IN_MM = 0.5;
  // A gauge's travel is shorter. Beyond it the unit is wrong, or the gauge is not set.
  private static final double LONGEST_TRAVEL_MM = 10;

  /** Bores, and the setting ring: nominal - 0.5 mm to the largest oversize + 1 mm. */
  static Plausible bores(Job job, Reads reads) {
    double offsetMm = reads == Reads.DEVIATION ? job.setting().sizeMm() : 0;
    return new Plausible(
        BORE, job.smallestBoreMm() - offsetMm, job.largestBoreMm() - offsetMm, offsetMm);
  }

  /** End gaps: 0 to 5 mm. */
  static Plausible gaps() {
    return new Plausible(GAP, 0, LARGEST_GAP_MM, 0);
  }

  /** A ring's depth below the deck: 0 to twice the stroke. */
  static Plausible ringDepths(Job job) {
    return new Plausible("ring depth", 0, 2 * job.engine().strokeMm(), 0);
  }

  /** Whether nothing at all can have this value, so that not even a person may confirm it. */
  boolean isImpossible(double valueMm) {
    return valueMm + offsetMm < 0 || valueMm + offsetMm == 0 && !what.equals(GAP);
  }

  /** Whether a bore gauge reads this only outside every bore, where its anvils spread. */
  boolean isFreeAir(double valueMm) {
    return what.equals(BORE) && valueMm > highMm;
  }

  /**
   * Whether a bore gauge reads this only with its plunger pushed in by hand: 0.5 mm and more below
   * the smallest bore, but no more than 10 mm. A bore near the window is neither.
   */
  boolean isPushedIn(double valueMm) {
    return what.equals(BORE)
        && valueMm <= lowMm - PUSHED_IN_MM
        && valueMm >= lowMm - LONGEST_TRAVEL_MM;
  }

  /** Why a value cannot be; empty when it can. */
  Optional<String> refusal(double valueMm) {
    if (valueMm >= lowMm && valueMm <= highMm) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "%s %.4f mm is outside %.4f to %.4f mm; check the gauge, its unit and its setting",
            what,
            valueMm + offsetMm,
            lowMm + offsetMm,
            highMm + offsetMm));
  }
}
