package boreledger.calc.geometry;

import boreledger.calc.input.ImpossibleInput;

/**
 * The complete elliptic integral of the second kind by the arithmetic-geometric mean.
 *
 * <p>With {@code a = 1, b = sqrt(1 - m), c = sqrt(m)} and {@code a' = (a + b)/2, b' = sqrt(ab), c'
 * = (a - b)/2} repeated, {@code E(m) = pi/(2a) (1 - sum 2^(n-1) c_n^2)} (NIST Digital Library of
 * Mathematical Functions, 19.8).
 */
public final class EllipticIntegral {
  private EllipticIntegral() {}

  /**
   * E(m), from pi/2 at m = 0 down to 1 at m = 1.
   *
   * @param m the parameter, the square of the modulus, 0 to 1
   * @throws ImpossibleInput when m is outside 0 to 1
   */
  public static double secondKind(double m) {
    if (!(m >= 0 && m <= 1)) {
      throw new ImpossibleInput("parameter m " + m + " of E(m) is not between 0 and 1");
    }
    // The mean of 1 and 0 never settles, and the limit is known.
    return m == 1 ? 1 : byMean(Math.sqrt(1 - m), m);
  }

  private static double byMean(double complement, double m) {
    double a = 1;
    double b = complement;
    double power = 0.5;
    double sum = power * m;
    double c;
    do {
      c = (a - b) / 2;
      double root = Math.sqrt(a * b);
      a = (a + b) / 2;
      b = root;
      power *= 2;
      sum += power * c * c;
    } while (c > Math.ulp(a));
    return Math.PI / (2 * a) * (1 - sum);
  }
}
