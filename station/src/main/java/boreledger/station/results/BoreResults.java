package boreledger.station.results;

import java.util.List;
import java.util.Map;

/**
 * One cylinder's bore. Lengths are millimetres at 20 degrees Celsius.
 *
 * @param positions every planned position, whether read or not
 * @param taperMm largest minus smallest diameter along each axis; 0 when the plan has a single
 *     depth, null as long as fewer than two of several are read
 * @param signedTaperMm shallowest minus deepest diameter along each axis; null likewise
 * @param outOfRoundMm largest minus smallest diameter across the axes at each depth
 * @param shape the profile in words, an intended choke taken off first: {@code straight}, {@code
 *     wide-at-top}, {@code wide-at-bottom}, {@code barrel} or {@code waist}; null until every
 *     position is read
 * @param wearLine the least-squares line of the mean diameter over depth; null until every position
 *     is read
 * @param clearance to the measured piston; null without one
 * @param checks against the job's limits
 */
public record BoreResults(
    List<PositionResult> positions,
    Map<String, Double> taperMm,
    Map<String, Double> signedTaperMm,
    List<OutOfRoundResult> outOfRoundMm,
    String shape,
    WearLineResult wearLine,
    ClearanceResult clearance,
    List<CheckResult> checks) {
  /** Takes copies of the lists. */
  public BoreResults {
    positions = List.copyOf(positions);
    outOfRoundMm = List.copyOf(outOfRoundMm);
    checks = List.copyOf(checks);
  }

  /**
   * A diameter, or null where it was not read yet.
   *
   * @param budget where its uncertainty comes from, line by line
   */
  public record PositionResult(
      double depthMm,
      String axis,
      Double diameterMm,
      Double expandedUncertaintyMm,
      List<BudgetLine> budget) {}

  /** An out-of-round, or null where not every axis was read yet. */
  public record OutOfRoundResult(double depthMm, Double valueMm, Double expandedUncertaintyMm) {}

  /**
   * A wear line.
   *
   * @param slopeMmPerMm diameter over depth; below zero in a bore that narrows downward
   */
  public record WearLineResult(double slopeMmPerMm, double slopeStandardUncertaintyMmPerMm) {}

  /** The smallest and the largest diameter less the piston's. */
  public record ClearanceResult(double smallestMm, double largestMm) {}
}
