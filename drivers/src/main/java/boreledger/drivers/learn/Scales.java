package boreledger.drivers.learn;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What one count is worth, from counts and the values shown with them.
 *
 * <p>Steps that gauges have: decimal numbers of up to three digits, and the powers of one half; of
 * a millimetre, or of an inch. A step that gives every value exactly goes before those that give
 * them rounded.
 */
final class Scales {
  private static final BigDecimal INCH_MM = new BigDecimal("25.4");
  private static final BigDecimal ENOUGH_COUNTS = BigDecimal.valueOf(200);
  private static final BigDecimal LARGEST_STEP_MM = BigDecimal.ONE;
  private static final int MOST_HALVINGS = 24;
  private static final int MOST_DIGITS = 3;

  private Scales() {}

  /**
   * A step that fits.
   *
   * @param mm the step in millimetres
   * @param exact whether it gives every shown value exactly
   */
  record Scale(BigDecimal mm, boolean exact) {}

  /** The steps that fit; without enough counts to go by there are none. */
  static List<Scale> fitting(List<BigDecimal> counts, List<ShownValue> shown) {
    int largest = 0;
    for (int i = 0; i < counts.size(); i++) {
      largest = counts.get(i).abs().compareTo(counts.get(largest).abs()) > 0 ? i : largest;
    }
    if (counts.get(largest).abs().compareTo(ENOUGH_COUNTS) < 0) {
      return List.of();
    }
    BigDecimal aboutMm =
        shown.get(largest).mm().divide(counts.get(largest), MathContext.DECIMAL128);
    if (aboutMm.signum() <= 0 || aboutMm.compareTo(LARGEST_STEP_MM) > 0) {
      return List.of();
    }
    List<Scale> exact = new ArrayList<>();
    List<Scale> rounded = new ArrayList<>();
    for (BigDecimal stepMm : steps(aboutMm)) {
      if (fits(stepMm, counts, shown, true)) {
        exact.add(new Scale(stepMm, true));
      } else if (fits(stepMm, counts, shown, false)) {
        rounded.add(new Scale(stepMm, false));
      }
    }
    return exact.isEmpty() ? rounded : exact;
  }

  private static boolean fits(
      BigDecimal stepMm, List<BigDecimal> counts, List<ShownValue> shown, boolean exactly) {
    for (int i = 0; i < counts.size(); i++) {
      BigDecimal valueMm = counts.get(i).multiply(stepMm);
      boolean fits =
          exactly
              ? valueMm.compareTo(shown.get(i).mm()) == 0
              : shown.get(i).isShownFor(valueMm, stepMm);
      if (!fits) {
        return false;
      }
    }
    return true;
  }

  /** Every step that a gauge might have, near a size. */
  private static Set<BigDecimal> steps(BigDecimal aboutMm) {
    Set<BigDecimal> steps = new LinkedHashSet<>();
    near(aboutMm).forEach(step -> steps.add(step.stripTrailingZeros()));
    for (BigDecimal stepIn : near(aboutMm.divide(INCH_MM, MathContext.DECIMAL128))) {
      steps.add(stepIn.multiply(INCH_MM).stripTrailingZeros());
    }
    return steps;
  }

  private static List<BigDecimal> near(BigDecimal about) {
    List<BigDecimal> steps = new ArrayList<>();
    for (int digits = 1; digits <= MOST_DIGITS; digits++) {
      BigDecimal middle = about.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      steps.add(middle);
      if (digits == MOST_DIGITS) {
        steps.add(middle.subtract(middle.ulp()));
        steps.add(middle.add(middle.ulp()));
      }
    }
    double halvings = -Math.log(about.doubleValue()) / Math.log(2);
    int whole = (int) Math.rint(halvings);
    if (whole >= 0 && whole <= MOST_HALVINGS) {
      steps.add(BigDecimal.ONE.divide(BigDecimal.valueOf(1L << whole)));
    }
    return steps;
  }
}
