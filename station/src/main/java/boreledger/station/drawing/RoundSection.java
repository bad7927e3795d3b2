package boreledger.station.drawing;

import java.util.List;

/**
 * A bore's section at one depth.
 *
 * @param diametersMm along each axis, in the plan's order; null where not read
 * @param outOfRoundMm largest less smallest; null until every axis is read
 * @param expandedUncertaintyMm of the out-of-round; null likewise
 */
public record RoundSection(
    double depthMm, List<Diameter> diametersMm, Double outOfRoundMm, Double expandedUncertaintyMm) {
  /** Takes a copy of the list. */
  public RoundSection {
    diametersMm = List.copyOf(diametersMm);
  }

  /**
   * The diameter along one axis.
   *
   * @param deg the axis's direction in degrees from the crankshaft
   * @param mm null where not read
   */
  public record Diameter(String axis, double deg, Double mm) {}

  /** Whether every axis was read, and there are two or more. */
  boolean whole() {
    return diametersMm.size() > 1 && diametersMm.stream().noneMatch(each -> each.mm() == null);
  }

  double meanMm() {
    return diametersMm.stream().mapToDouble(Diameter::mm).average().orElse(0);
  }

  /** The largest deviation of a diameter from their mean. */
  double deviationMm() {
    double meanMm = meanMm();
    return diametersMm.stream().mapToDouble(each -> Math.abs(each.mm() - meanMm)).max().orElse(0);
  }

  /**
   * How far the diameter in a direction lies from the mean: a smooth periodic curve through the
   * axes that were read. With evenly spaced axes it is the trigonometric interpolation with period
   * 180 degrees; between the axes it is only a guess.
   */
  double deviationMm(double deg) {
    int n = diametersMm.size();
    double meanMm = meanMm();
    double sumMm = 0;
    for (Diameter each : diametersMm) {
      sumMm += (each.mm() - meanMm) * kernel(2 * Math.toRadians(deg - each.deg()), n);
    }
    return sumMm;
  }

  /** The periodic sinc: 1 at 0, and 0 at every other one of {@code n} evenly spaced angles. */
  private static double kernel(double rad, int n) {
    double half = rad / 2;
    if (Math.abs(Math.sin(half)) < 1e-9) {
      return 1;
    }
    double top = Math.sin(n * half);
    return n % 2 == 0 ? top / (n * Math.tan(half)) : top / (n * Math.sin(half));
  }
}
