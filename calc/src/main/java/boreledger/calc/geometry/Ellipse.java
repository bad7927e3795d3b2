package boreledger.calc.geometry;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;

/**
 * An ellipse by its two full axes, such as a worn bore of 96.061 by 96.047 mm.
 *
 * @param majorMm the longer axis in millimetres; above zero
 * @param minorMm the shorter axis in millimetres; above zero, at most the longer
 */
public record Ellipse(double majorMm, double minorMm) {
  private static final double NEARLY_ROUND = 0.01;

  /**
   * Checks both axes.
   *
   * @throws ImpossibleInput when one is not above zero or the minor is longer than the major
   */
  public Ellipse {
    Require.positive("minor axis", minorMm, "mm");
    Require.positive("major axis", majorMm, "mm");
    if (minorMm > majorMm) {
      throw new ImpossibleInput(
          "minor axis " + minorMm + " mm is longer than the major axis " + majorMm + " mm");
    }
  }

  /** The ellipse of two perpendicular diameters, in either order. */
  public static Ellipse ofDiameters(double oneMm, double otherMm) {
    return new Ellipse(Math.max(oneMm, otherMm), Math.min(oneMm, otherMm));
  }

  /** Its perimeter {@code 4a E(1 - (b/a)^2)} in millimetres, a and b the half axes. */
  public double perimeterMm() {
    double ratio = minorMm / majorMm;
    return 2 * majorMm * EllipticIntegral.secondKind((1 - ratio) * (1 + ratio));
  }

  /**
   * How much longer its perimeter is than that of the circle on its minor axis, in millimetres.
   *
   * <p>Nearly round ellipses go by the series in {@code h = ((a - b)/(a + b))^2}, because the plain
   * difference of two perimeters loses its digits there.
   */
  public double excessOverMinorCircleMm() {
    return excessMm(majorMm - minorMm, minorMm);
  }

  /**
   * The same for an ellipse given by how much its axes differ, for differences too small to survive
   * being added to an axis.
   *
   * @param differenceMm major minus minor axis in millimetres; zero or more
   * @param minorMm the minor axis in millimetres; above zero
   */
  static double excessMm(double differenceMm, double minorMm) {
    double sumMm = 2 * minorMm + differenceMm;
    double h = Math.pow(differenceMm / sumMm, 2);
    if (h > NEARLY_ROUND) {
      return new Ellipse(minorMm + differenceMm, minorMm).perimeterMm() - Math.PI * minorMm;
    }
    return Math.PI / 2 * (differenceMm + sumMm * seriesBeyondOne(h));
  }

  /** Sum over n from 1 of (1/2 over n) squared times h^n. */
  private static double seriesBeyondOne(double h) {
    double coefficient = 1;
    double power = 1;
    double sum = 0;
    for (int n = 1; n <= 8; n++) {
      coefficient *= (1.5 - n) / n;
      power *= h;
      sum += coefficient * coefficient * power;
    }
    return sum;
  }

  /**
   * The cut of a plane through a cylinder, tilted off square.
   *
   * @param cylinderMm the cylinder's diameter in millimetres; above zero
   * @param tangent of the tilt; zero or more
   * @return how much longer the cut is than the circle, in millimetres
   */
  public static double tiltedCutExcessMm(double cylinderMm, double tangent) {
    Require.positive("cylinder", cylinderMm, "mm");
    double tangentSquared = Require.notNegative("tangent of the tilt", tangent, "") * tangent;
    double secant = Math.sqrt(1 + tangentSquared);
    // sec t - 1 = tan^2 t / (sec t + 1) keeps its digits for the smallest tilt.
    return excessMm(cylinderMm * (tangentSquared / (secant + 1)), cylinderMm);
  }
}
