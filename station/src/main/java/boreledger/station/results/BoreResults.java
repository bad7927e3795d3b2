package boreledger.station.results;

import java.util.List;
import java.util.Map;

/**
 * One cylinder's bore. Lengths are millimetres at 20 degrees Celsius.
 *
 * @param positions every planned position, whether read or not
 * @param taperMm largest minus smallest diameter along each axis; null with fewer than two depths
 * @param outOfRoundMm largest minus smallest diameter across the axes at each depth
 * @param shape the profile in words; null until it can be told
 * @param checks against the job's limits
 */
public record BoreResults(
    List<PositionResult> positions,
    Map<String, Double> taperMm,
    List<OutOfRoundResult> outOfRoundMm,
    String shape,
    List<CheckResult> checks) {
  /** Takes copies of the lists. */
  public BoreResults {
    positions = List.copyOf(positions);
    outOfRoundMm = List.copyOf(outOfRoundMm);
    checks = List.copyOf(checks);
  }

  /** A diameter, or null where it was not read yet. */
  public record PositionResult(
      double depthMm, String axis, Double diameterMm, Double expandedUncertaintyMm) {}

  /** An out-of-round, or null where not every axis was read yet. */
  public record OutOfRoundResult(double depthMm, Double valueMm, Double expandedUncertaintyMm) {}
}
