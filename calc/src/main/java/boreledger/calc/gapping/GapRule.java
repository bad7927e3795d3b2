package boreledger.calc.gapping;

import boreledger.calc.input.Require;

/**
 * One row of the gap rule table.
 *
 * @param use how the engine will be used, such as {@code boosted-hard}
 * @param ring which ring, such as {@code top}
 * @param factor gap per bore, above zero; null for a ring that is only verified, never filed
 * @param origin where the row comes from, in words, such as {@code common practice, no source}
 * @param note what else to mind; may be empty
 */
public record GapRule(String use, String ring, Double factor, String origin, String note) {
  /** Checks the factor. */
  public GapRule {
    if (factor != null) {
      Require.positive("factor of the gap rule " + use + ", " + ring, factor, "");
    }
  }

  /** Whether the ring is only verified. */
  public boolean verifyOnly() {
    return factor == null;
  }
}
