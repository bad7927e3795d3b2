package boreledger.station.job;

import boreledger.station.table.Material;

/**
 * The engine.
 *
 * @param block what the block is made of
 * @param bore what the bore's wall is made of: the block, unless the job names a liner
 * @param condition {@code bare} or {@code torque-plate}; null when not said
 * @param mainCaps {@code torqued} or {@code loose}; null when not said
 */
public record Engine(
    int cylinders,
    Arrangement arrangement,
    double nominalBoreMm,
    double strokeMm,
    Material block,
    Material bore,
    String condition,
    String mainCaps) {
  /** How the cylinders stand. */
  public enum Arrangement {
    /** In one row. */
    INLINE,
    /** In two rows at an angle. */
    VEE,
    /** In two rows, opposed. */
    FLAT
  }
}
