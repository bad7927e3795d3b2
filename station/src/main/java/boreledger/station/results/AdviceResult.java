package boreledger.station.results;

import boreledger.station.wording.Statement;
import java.util.List;

/**
 * Hone or oversize for the whole engine; all its cylinders go to the same oversize.
 *
 * @param cure {@code hone}, {@code oversize} or {@code sleeve-or-block}
 * @param oversizeMm the smallest listed oversize that cleans every cylinder when each cut follows
 *     its worn bore, whether or not honing would do; null when none does
 * @param oversizeOnOriginalCentreMm the same for cuts on the original centres of bores worn on one
 *     side; null when none does
 * @param largestListed whether the oversize is the largest listed: compare the remaining wall with
 *     the maker's data first
 */
public record AdviceResult(
    String cure,
    Double oversizeMm,
    Double oversizeOnOriginalCentreMm,
    boolean largestListed,
    List<CylinderAdviceResult> cylinders) {
  /** Takes a copy of the list. */
  public AdviceResult {
    cylinders = List.copyOf(cylinders);
  }

  /**
   * One cylinder.
   *
   * @param oversizeMm what it would need by itself; null when no listed one cleans it
   * @param finishedMm the diameter advised for it; null when there is none
   * @param clearanceMm the measured piston's clearance there; null without a piston
   * @param reasons why honing alone will not do; empty when it will
   */
  public record CylinderAdviceResult(
      int cylinder,
      Double oversizeMm,
      Double oversizeOnOriginalCentreMm,
      Double finishedMm,
      Double clearanceMm,
      List<Statement> reasons) {
    /** Takes a copy of the list. */
    public CylinderAdviceResult {
      reasons = List.copyOf(reasons);
    }
  }
}
