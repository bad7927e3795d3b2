package boreledger.drivers.pick;

/**
 * Values that a position could give, such as −0.5 mm to 2.0 mm; beyond them a gauge is not in the
 * bore.
 *
 * @param leastMm the least value, in the gauge's own terms: a deviation or a size
 * @param mostMm the largest, not below the least
 */
public record PlausibleWindow(double leastMm, double mostMm) {
  /**
   * Checks the order of the limits.
   *
   * @throws IllegalArgumentException if they are not two numbers in order
   */
  public PlausibleWindow {
    if (!(leastMm <= mostMm)) {
      throw new IllegalArgumentException(leastMm + " mm to " + mostMm + " mm is no window");
    }
  }

  /** Whether the value is inside or on a limit. */
  public boolean contains(double valueMm) {
    return leastMm <= valueMm && valueMm <= mostMm;
  }
}
