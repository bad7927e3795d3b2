package boreledger.calc.bore;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.util.Map;

/**
 * A bore that is meant not to be straight, such as one that is narrower at the top.
 *
 * @param offsetMmByDepthMm how far the diameter is meant to be off a straight bore, negative where
 *     it is meant to be narrower, by depth below the deck; empty when it is meant to be straight
 */
public record IntendedProfile(Map<Double, Double> offsetMmByDepthMm) {
  /** A bore that is meant to be straight. */
  public static final IntendedProfile STRAIGHT = new IntendedProfile(Map.of());

  /** Takes a copy and checks every number. */
  public IntendedProfile {
    offsetMmByDepthMm = Map.copyOf(offsetMmByDepthMm);
    offsetMmByDepthMm.forEach(
        (depthMm, offsetMm) -> {
          Require.notNegative("depth of an intended choke", depthMm, "mm");
          Require.finite("intended choke", offsetMm, "mm");
        });
  }

  /**
   * What is to be taken off a diameter gauged at a depth, in millimetres.
   *
   * @throws ImpossibleInput when the bore is not meant to be straight and this depth is not listed
   */
  double offsetMm(double depthMm) {
    if (offsetMmByDepthMm.isEmpty()) {
      return 0;
    }
    Double offsetMm = offsetMmByDepthMm.get(depthMm);
    if (offsetMm == null) {
      throw new ImpossibleInput("no intended choke given at depth " + depthMm + " mm");
    }
    return offsetMm;
  }
}
