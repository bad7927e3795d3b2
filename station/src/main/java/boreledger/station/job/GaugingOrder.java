package boreledger.station.job;

import java.util.List;

/**
 * Where each bore is gauged.
 *
 * @param depthsMm depths below the deck, shallowest first
 * @param axes the axes' names in the order they are gauged, evenly spaced around the bore
 * @param chokeMm how much narrower than at the widest the bore is meant to be at each depth; null
 *     when straight bores are meant
 * @param clockDeg clock positions at which a ring's depth is read
 */
public record GaugingOrder(
    List<Double> depthsMm, List<String> axes, List<Double> chokeMm, List<Double> clockDeg) {
  /** Takes copies of the lists. */
  public GaugingOrder {
    depthsMm = List.copyOf(depthsMm);
    axes = List.copyOf(axes);
    chokeMm = chokeMm == null ? null : List.copyOf(chokeMm);
    clockDeg = List.copyOf(clockDeg);
  }
}
