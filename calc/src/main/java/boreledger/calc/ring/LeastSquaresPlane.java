package boreledger.calc.ring;

import java.util.List;

/** The least-squares plane through depths on a circle. */
final class LeastSquaresPlane {
  private LeastSquaresPlane() {}

  /** The plane's steepest slope, depth per length across the bore. */
  static double steepestSlope(double radiusMm, List<ClockDepth> depths) {
    int n = depths.size();
    double[] x = new double[n];
    double[] y = new double[n];
    double[] z = new double[n];
    for (int i = 0; i < n; i++) {
      double angle = Math.toRadians(depths.get(i).withinTurnDeg());
      x[i] = Math.cos(angle);
      y[i] = Math.sin(angle);
      z[i] = depths.get(i).depthMm();
    }
    center(x);
    center(y);
    center(z);
    double xx = dot(x, x);
    double xy = dot(x, y);
    double yy = dot(y, y);
    double determinant = xx * yy - xy * xy;
    double slopeX = (yy * dot(x, z) - xy * dot(y, z)) / determinant;
    double slopeY = (xx * dot(y, z) - xy * dot(x, z)) / determinant;
    return Math.hypot(slopeX, slopeY) / radiusMm;
  }

  private static void center(double[] values) {
    double mean = 0;
    for (double value : values) {
      mean += value / values.length;
    }
    for (int i = 0; i < values.length; i++) {
      values[i] -= mean;
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
