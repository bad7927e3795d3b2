package boreledger.station.job;

import boreledger.station.table.Material;
import java.util.List;

/**
 * A kind of ring, one of which goes into every cylinder.
 *
 * @param kind what it does
 * @param travelTopMm its depth below the deck at top dead centre
 * @param travelBottomMm its depth below the deck at bottom dead centre
 * @param gapMinMm the ring or engine maker's smallest gap
 * @param gapMaxMm the ring or engine maker's largest gap
 * @param rule the row of the gap rule table; null when {@code targetMm} is given
 * @param targetMm the wanted gap; null when {@code rule} is given
 * @param depthsMm where the gap is gauged, shallowest first
 * @param radialWallMm its radial wall; null when not said
 */
public record Ring(
    String name,
    RingKind kind,
    Material material,
    double travelTopMm,
    double travelBottomMm,
    double gapMinMm,
    double gapMaxMm,
    String rule,
    Double targetMm,
    List<Double> depthsMm,
    Double radialWallMm) {
  /** Takes a copy of the list. */
  public Ring {
    depthsMm = List.copyOf(depthsMm);
  }

  /**
   * The greatest depth in millimetres at which gauging makes sense: the lower end of the travel
   * that reaches deepest, or twice the stroke when no ring is listed.
   */
  static double deepestMm(List<Ring> rings, Engine engine) {
    return rings.stream().mapToDouble(Ring::travelBottomMm).max().orElse(2 * engine.strokeMm());
  }
}
