package boreledger.calc.uncertainty;

/** Standard uncertainties of bounds and certificates (GUM 4.3), in the unit of the bound. */
public final class TypeB {
  private static final double SQRT_3 = Math.sqrt(3);
  private static final double SQRT_12 = Math.sqrt(12);

  private TypeB() {}

  /** A display that steps by this much: the true value is anywhere within half a step. */
  public static double resolution(double step) {
    return step / SQRT_12;
  }

  /** Anywhere within plus or minus this much, such as a maximum permissible error. */
  public static double rectangular(double halfWidth) {
    return halfWidth / SQRT_3;
  }

  /**
   * An expanded uncertainty from a certificate.
   *
   * @param coverageFactor the certificate's k, above zero
   */
  public static double expanded(double expandedUncertainty, double coverageFactor) {
    return expandedUncertainty / coverageFactor;
  }
}
