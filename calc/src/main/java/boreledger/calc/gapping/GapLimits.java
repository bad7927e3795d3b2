package boreledger.calc.gapping;

import boreledger.calc.decision.Limit;
import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.util.Optional;

/**
 * The ring or engine maker's limits for an end gap.
 *
 * @param minMm the smallest gap allowed, at the tightest point of the travel, in millimetres; null
 *     when the maker says none
 * @param maxMm the largest gap allowed, at the widest point; null when the maker says none
 */
public record GapLimits(Double minMm, Double maxMm) {
  /** A maker who says nothing. */
  public static final GapLimits NONE = new GapLimits(null, null);

  /**
   * Checks both limits.
   *
   * @throws ImpossibleInput when the smallest is not below the largest
   */
  public GapLimits {
    if (minMm != null) {
      Require.notNegative("smallest gap", minMm, "mm");
    }
    if (maxMm != null) {
      Require.positive("largest gap", maxMm, "mm");
    }
    if (minMm != null && maxMm != null && minMm >= maxMm) {
      throw new ImpossibleInput(
          "smallest gap " + minMm + " mm is not below the largest gap " + maxMm + " mm");
    }
  }

  /** The limit at the tightest point; empty when the maker says none. */
  public Optional<Limit> atTightest() {
    return Optional.ofNullable(minMm).map(Limit.Lower::new);
  }

  /** The limit at the widest point; empty when the maker says none. */
  public Optional<Limit> atWidest() {
    return Optional.ofNullable(maxMm).map(Limit.Upper::new);
  }

  /**
   * The upper half of the range, wanted of an oil rail under added boost (common practice, no
   * source); unchanged unless both limits are known.
   */
  public GapLimits upperHalf() {
    return minMm == null || maxMm == null ? this : new GapLimits((minMm + maxMm) / 2, maxMm);
  }
}
