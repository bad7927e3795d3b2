package boreledger.station.results;

import boreledger.station.wording.Statement;
import java.util.List;

/**
 * One ring in one cylinder. Lengths are millimetres at 20 degrees Celsius, but {@code measuredMm},
 * which is kept as read.
 *
 * @param mark the mark of the physical ring; null when the job gives none
 * @param gaps every planned depth, whether read or not
 * @param tightest the tightest point of the travel; null until it can be told
 * @param targetMm the wanted gap there; null for a ring that is only verified
 * @param target where the target comes from; null for a ring that is only verified
 * @param removeMm how much to file; null until it can be told
 * @param state {@code file}, {@code ready}, {@code too-wide} or {@code unknown}
 * @param taperFromGaps the bore's taper by the gap readings alone; null with fewer than two
 * @param attention whether the ring asks a person to look
 * @param filed the passes with the file, in the order they were noted
 */
public record RingResults(
    String ring,
    String mark,
    List<GapResult> gaps,
    TightestResult tightest,
    Double targetMm,
    TargetResult target,
    Double removeMm,
    String state,
    TaperResult taperFromGaps,
    boolean attention,
    List<Statement> cautions,
    List<FiledResult> filed) {
  /** Takes copies of the lists. */
  public RingResults {
    gaps = List.copyOf(gaps);
    cautions = List.copyOf(cautions);
    filed = List.copyOf(filed);
  }

  /**
   * A ring's gap at one depth.
   *
   * @param measuredMm as read; null when not read yet
   * @param measuredUncertaintyMm its expanded uncertainty; null likewise
   * @param expectedChangeMm the change from the shallowest gauged depth that the bore predicts
   * @param expectedChangeUncertaintyMm its expanded uncertainty
   * @param expectedMm what the bore and the ring's other gap readings predict here
   * @param en the agreement of the two; between -1 and 1 they agree
   * @param tiltDeg how far the ring was from square, by its depths around the clock; null unless
   *     they were read
   * @param correctedMm the gap as it would read with the ring square; null unless the tilt is known
   * @param beyondReadings whether no bore was read on one side of this depth
   */
  public record GapResult(
      double depthMm,
      Double measuredMm,
      Double measuredUncertaintyMm,
      Double expectedChangeMm,
      Double expectedChangeUncertaintyMm,
      Double expectedMm,
      Double en,
      Double tiltDeg,
      Double correctedMm,
      boolean beyondReadings) {}

  /**
   * The tightest point of a ring's travel, cold and hot.
   *
   * @param gapMm the cold gap there
   * @param hotGapMm the smallest gap of the travel when running; below zero when the ends butt
   * @param hotDepthMm where that is
   * @param temperaturesOrigin where the running temperatures come from
   * @param coldGapForMarginMm the cold gap that leaves the wanted margin when running
   * @param cautiousGapMm the smallest the cold gap may be where the bore was not read
   * @param beyondReadings whether no bore was read on one side of it
   * @param budget where the uncertainty of the cold gap comes from
   */
  public record TightestResult(
      double depthMm,
      double gapMm,
      double expandedUncertaintyMm,
      double hotGapMm,
      double hotDepthMm,
      String temperaturesOrigin,
      double coldGapForMarginMm,
      double cautiousGapMm,
      boolean beyondReadings,
      List<BudgetLine> budget) {}

  /**
   * Where a target comes from.
   *
   * @param factor gap per bore when a rule gives it; else null
   * @param raisedFromMm what the origin gives, when the target stands above it; else null
   * @param raisedTo what it was lifted to, in words; else null
   */
  public record TargetResult(Double factor, String origin, Double raisedFromMm, String raisedTo) {}

  /** A length and its expanded uncertainty. */
  public record TaperResult(double amountMm, double expandedUncertaintyMm) {}
}
