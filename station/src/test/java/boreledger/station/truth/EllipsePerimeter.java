package boreledger.station.truth;

/**
 * Perimeter of an ellipse by adding up its arc length, without elliptic integrals.
 *
 * <p>The ellipse is walked once round: x = a·cos s, y = b·sin s, so that its length is the integral
 * of √(a²·sin² s + b²·cos² s) over s from 0 to 2π. The integrand is smooth and periodic, and the
 * trapezoidal rule over a whole period of such a function gains digits in proportion to the number
 * of points. The points are doubled until the sum no longer changes in its 14th digit; the sum is
 * compensated. For bores this is good to about 1e-12 mm, far below the nanometre that is claimed.
 */
public final class EllipsePerimeter {
  private static final double SETTLED = 1e-14;
  private static final int MOST_POINTS = 1 << 22;

  private EllipsePerimeter() {}

  /** Perimeter of the ellipse with these two diameters, in the unit of the diameters. */
  public static double ofDiametersMm(double oneMm, double otherMm) {
    if (!(oneMm > 0) || !(otherMm > 0)) {
      throw new IllegalArgumentException("no ellipse " + oneMm + " x " + otherMm + " mm");
    }
    double before = sumOf(oneMm / 2, otherMm / 2, 16);
    for (int points = 32; points <= MOST_POINTS; points *= 2) {
      double now = sumOf(oneMm / 2, otherMm / 2, points);
      if (Math.abs(now - before) <= SETTLED * now) {
        return now;
      }
      before = now;
    }
    throw new IllegalStateException("no settled perimeter for " + oneMm + " x " + otherMm + " mm");
  }

  private static double sumOf(double a, double b, int points) {
    double sum = 0;
    double lost = 0;
    for (int i = 0; i < points; i++) {
      double s = 2 * StrictMath.PI * i / points;
      double speed = StrictMath.hypot(a * StrictMath.sin(s), b * StrictMath.cos(s));
      double next = sum + speed;
      lost += sum >= speed ? (sum - next) + speed : (speed - next) + sum;
      sum = next;
    }
    return (sum + lost) * (2 * StrictMath.PI / points);
  }
}
