package boreledger.station.truth;

/** Temperatures of the running engine, as the job gives them. */
public record Running(
    double ringTempC, double wallTopTempC, double wallBottomTempC, double hotMarginMm) {

  /** Wall temperature at a depth, straight from the top to the bottom of a ring's travel. */
  double wallTempC(RingKind ring, double depthMm) {
    double share = (depthMm - ring.travelTopMm()) / (ring.travelBottomMm() - ring.travelTopMm());
    return wallTopTempC + (wallBottomTempC - wallTopTempC) * share;
  }
}
