package boreledger.station.results;

import java.util.List;

/**
 * One ring in one cylinder. Lengths are millimetres at 20 degrees Celsius, but {@code measuredMm},
 * which is kept as read.
 *
 * @param gaps every planned depth, whether read or not
 * @param tightest the tightest point of the travel; null until it can be told
 * @param targetMm the wanted gap there; null until it can be told
 * @param removeMm how much to file; null until it can be told
 * @param state {@code file}, {@code ready}, {@code too-wide} or {@code unknown}
 */
public record RingResults(
    String ring,
    List<GapResult> gaps,
    TightestResult tightest,
    Double targetMm,
    Double removeMm,
    String state) {
  /** Takes a copy of the list. */
  public RingResults {
    gaps = List.copyOf(gaps);
  }

  /**
   * A ring's gap at one depth.
   *
   * @param measuredMm as read; null when not read yet
   * @param expectedChangeMm the change from the shallowest gauged depth that the bore predicts
   * @param expectedChangeUncertaintyMm its expanded uncertainty
   * @param expectedMm what the bore and the ring's other gap readings predict here
   * @param en the agreement of the two; between -1 and 1 they agree
   * @param beyondReadings whether no bore was read on one side of this depth
   */
  public record GapResult(
      double depthMm,
      Double measuredMm,
      Double expectedChangeMm,
      Double expectedChangeUncertaintyMm,
      Double expectedMm,
      Double en,
      boolean beyondReadings) {}

  /** The tightest point of a ring's travel, cold and hot. */
  public record TightestResult(double depthMm, double gapMm, Double hotGapMm) {}
}
