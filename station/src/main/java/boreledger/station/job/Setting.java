package boreledger.station.job;

/**
 * What the bore gauge is zeroed on.
 *
 * @param kind a setting ring, or a micrometer set to a size
 * @param sizeMm its size at 20 degrees Celsius
 * @param expandedUncertaintyMm of the size, k = 2
 * @param maxErrorMm a micrometer's own permissible error; null for a ring
 */
public record Setting(
    Kind kind, double sizeMm, double expandedUncertaintyMm, double ctePerK, Double maxErrorMm) {
  /** The kinds of setting. */
  public enum Kind {
    /** A setting ring. */
    RING,
    /** A micrometer set to the size. */
    MICROMETER
  }
}
