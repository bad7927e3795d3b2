package boreledger.station.truth;

import java.math.BigDecimal;
import java.util.List;

/**
 * A ring of the set, as the job describes it; one of each kind goes into every cylinder.
 *
 * @param material null when the coefficient stands in its place
 * @param rule row of the gap rule table, null when targetMm is given
 * @param targetMm null when the rule is given
 * @param depthsMm where its gap is gauged, in the order of the job file
 */
public record RingKind(
    String name,
    String material,
    BigDecimal ctePerK,
    double travelTopMm,
    double travelBottomMm,
    double gapMinMm,
    double gapMaxMm,
    String rule,
    Double targetMm,
    List<Double> depthsMm) {

  /**
   * The depths in the order of gauging. The design says "cylinder by cylinder, depth by depth"; as
   * for bores that is read as from the deck down, whatever the order in the job file.
   */
  public List<Double> gaugingOrderMm() {
    return depthsMm.stream().sorted().toList();
  }
}
