package boreledger.calc.filing;

/** What to do next with a ring that is being filed. */
public sealed interface FilingAdvice {
  /**
   * The gap is already above the largest allowed; the ring cannot be mended by filing.
   *
   * @param gapMm the gap in millimetres
   * @param largestMm the largest allowed
   */
  record TooWide(double gapMm, double largestMm) implements FilingAdvice {}

  /**
   * Stop: what is left is within the gap's uncertainty, or nothing is left.
   *
   * @param remainderMm target less gap, in millimetres; below zero when the target is passed
   * @param expandedUncertaintyMm the gap's expanded uncertainty
   */
  record Ready(double remainderMm, double expandedUncertaintyMm) implements FilingAdvice {}

  /**
   * File a little and measure: nothing is known yet about what a turn takes off.
   *
   * @param remainderMm what is left to file, in millimetres
   */
  record FileALittleAndMeasure(double remainderMm) implements FilingAdvice {}

  /**
   * The passes so far opened the gap by nothing, on the whole; readings, ring or file want a look.
   *
   * @param removalPerTurnMm the removal per turn that came out, in millimetres; zero or less
   */
  record NothingRemoved(double removalPerTurnMm) implements FilingAdvice {}

  /**
   * Turns for at most half the remainder: under three passes say too little for more.
   *
   * @param turns 1 or more
   * @param removalPerTurnMm the mean removal per turn so far, in millimetres
   * @param expectedGapMm the gap expected after them
   */
  record HalfTheRemainder(int turns, double removalPerTurnMm, double expectedGapMm)
      implements FilingAdvice {}

  /**
   * The most turns whose chance of passing the limit is below 1 %.
   *
   * @param turns 1 or more
   * @param expectedGapMm the gap expected after them, in millimetres
   * @param chanceOfPassing the chance that they pass the limit, 0 to 0.01
   * @param rate what a turn takes off
   */
  record NextPass(int turns, double expectedGapMm, double chanceOfPassing, RemovalRate rate)
      implements FilingAdvice {}

  /**
   * A single turn is too much for the rule: it may take more than half the remainder (under three
   * passes), or its chance of passing the limit is 1 % or more. A finer cut, or a better reading of
   * the gap, is needed to go on.
   *
   * @param removalPerTurnMm what a turn takes off, in millimetres
   * @param chanceOfPassing the chance that one turn passes the limit; null under three passes
   */
  record OneTurnTooMuch(double removalPerTurnMm, Double chanceOfPassing) implements FilingAdvice {}
}
