package boreledger.calc.ring;

import boreledger.calc.uncertainty.Estimate;

/** What the bore and a ring's other gap readings say about one reading. */
public sealed interface Expectation {
  /** The expected gap in millimetres, or null when it cannot be known. */
  Double expectedMm();

  /** The E_n score, or null when it cannot be known. */
  Double en();

  /**
   * A gap to compare with.
   *
   * @param gap the expected gap at 20 degrees Celsius, this reading left out
   * @param score (read - expected) / root of the sum of both expanded uncertainties squared (ISO
   *     13528, ISO/IEC 17043)
   */
  record Predicted(Estimate gap, double score) implements Expectation {
    @Override
    public Double expectedMm() {
      return gap.valueMm();
    }

    @Override
    public Double en() {
      return score;
    }

    /** Whether reading and expectation agree, the score between -1 and 1. */
    public boolean agrees() {
      return Math.abs(score) <= 1;
    }
  }

  /**
   * Nothing to compare with.
   *
   * @param have how many depths have a gap reading
   * @param need how many are needed
   */
  record TooFewDepths(int have, int need) implements Expectation {
    @Override
    public Double expectedMm() {
      return null;
    }

    @Override
    public Double en() {
      return null;
    }
  }
}
