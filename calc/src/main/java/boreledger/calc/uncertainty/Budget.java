package boreledger.calc.uncertainty;

import java.util.List;
import java.util.stream.Stream;

/**
 * The uncertainty of one number, line by line.
 *
 * <ul>
 *   <li>Combined standard uncertainty: root of the sum of squares (GUM 5.1.2); components are taken
 *       as uncorrelated, whatever two ends share is left out before a budget is made.
 *   <li>Effective degrees of freedom: Welch-Satterthwaite (GUM G.4.1, equation G.2b). They are used
 *       as they come out; they are not cut to a whole number as a reader of a printed table must.
 *   <li>Coverage factor: Student's t for 95 % between both tails.
 *   <li>No components, or all of them zero: combined and expanded uncertainty are zero, degrees of
 *       freedom infinite, every share zero.
 * </ul>
 *
 * @param components the lines, in the order they are to be shown
 */
public record Budget(List<Component> components) {
  /** The level of confidence of expanded uncertainties. */
  public static final double LEVEL = 0.95;

  /** Takes a copy of the list. */
  public Budget {
    components = List.copyOf(components);
  }

  /** A budget of these lines. */
  public static Budget of(Component... components) {
    return new Budget(List.of(components));
  }

  /** The combined standard uncertainty in millimetres. */
  public double combinedMm() {
    return Math.sqrt(varianceMm2());
  }

  /** The effective degrees of freedom; infinite when no line limits them. */
  public double effectiveDegreesOfFreedom() {
    double variance = varianceMm2();
    if (variance == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double limited = 0;
    for (Component line : components) {
      double share = line.varianceMm2() / variance;
      limited += share * share / line.degreesOfFreedom();
    }
    return limited == 0 ? Double.POSITIVE_INFINITY : 1 / limited;
  }

  /** Student's t that covers 95 % between both tails. */
  public double coverageFactor() {
    return coverageFactor(LEVEL);
  }

  /**
   * Student's t that covers a share of the results between both tails.
   *
   * @param level the share, above 0 and below 1
   */
  public double coverageFactor(double level) {
    return StudentT.coverageFactor(level, effectiveDegreesOfFreedom());
  }

  /** The expanded uncertainty for 95 % in millimetres. */
  public double expandedMm() {
    return coverageFactor() * combinedMm();
  }

  /** What each line adds to the combined variance, in the budget's order. */
  public List<Share> shares() {
    double variance = varianceMm2();
    return components.stream()
        .map(line -> new Share(line, variance == 0 ? 0 : line.varianceMm2() / variance))
        .toList();
  }

  /** This budget with more lines at its end. */
  public Budget with(Component... more) {
    return new Budget(Stream.concat(components.stream(), Stream.of(more)).toList());
  }

  /** This budget with another's lines at its end; both must have nothing in common. */
  public Budget with(Budget other) {
    return with(other.components.toArray(Component[]::new));
  }

  /** The budget of a result that depends on this one's by a factor; the sign does not matter. */
  public Budget times(double sensitivity) {
    return new Budget(components.stream().map(line -> line.times(sensitivity)).toList());
  }

  private double varianceMm2() {
    return components.stream().mapToDouble(Component::varianceMm2).sum();
  }

  /**
   * A line and how much of the whole it is.
   *
   * @param component the line
   * @param ofVariance its share of the combined variance, 0 to 1
   */
  public record Share(Component component, double ofVariance) {}
}
