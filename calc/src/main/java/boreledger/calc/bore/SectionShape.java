package boreledger.calc.bore;

import boreledger.calc.geometry.Ellipse;
import boreledger.calc.input.Require;
import java.util.List;

/**
 * The ellipse through the diameters of one section.
 *
 * <ul>
 *   <li>One axis: a circle.
 *   <li>Two axes, perpendicular: the ellipse with these axes.
 *   <li>Three or more, evenly spaced over 180 degrees in the order given: the mean diameter, and
 *       the second harmonic over the angle, whose amplitude is half the difference of the ellipse's
 *       axes. Higher lobes do not change a perimeter to the first order and are left out.
 * </ul>
 */
public final class SectionShape {
  private SectionShape() {}

  /**
   * The ellipse through diameters.
   *
   * @param diametersMm one or more, each above zero, in millimetres
   */
  public static Ellipse through(List<Double> diametersMm) {
    Require.atLeast(1, diametersMm.size(), "diameters of a section");
    diametersMm.forEach(each -> Require.positive("diameter", each, "mm"));
    if (diametersMm.size() <= 2) {
      return Ellipse.ofDiameters(diametersMm.get(0), diametersMm.get(diametersMm.size() - 1));
    }
    double meanMm = diametersMm.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    double amplitudeMm = secondHarmonicMm(diametersMm, meanMm);
    return Ellipse.ofDiameters(meanMm + amplitudeMm, meanMm - amplitudeMm);
  }

  private static double secondHarmonicMm(List<Double> diametersMm, double meanMm) {
    int n = diametersMm.size();
    double cosine = 0;
    double sine = 0;
    for (int k = 0; k < n; k++) {
      double twiceAngle = 2 * Math.PI * k / n;
      cosine += (diametersMm.get(k) - meanMm) * Math.cos(twiceAngle);
      sine += (diametersMm.get(k) - meanMm) * Math.sin(twiceAngle);
    }
    return 2.0 / n * Math.hypot(cosine, sine);
  }
}
