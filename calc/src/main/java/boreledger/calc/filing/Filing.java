package boreledger.calc.filing;

import boreledger.calc.input.Require;
import boreledger.calc.uncertainty.Estimate;
import java.util.List;

/**
 * A ring that is being filed.
 *
 * <ul>
 *   <li>Gap above the largest allowed: too wide.
 *   <li>Remainder, target less gap, not above the gap's expanded uncertainty: ready.
 *   <li>No pass yet: file a little and measure.
 *   <li>One or two passes: turns for at most half the remainder, by the mean removal per turn.
 *   <li>Three or more: the most turns for which the chance of passing target plus tolerance, or the
 *       largest gap where that is less, stays below 1 % by the predictive t distribution.
 * </ul>
 *
 * @param gap the gap now, from the last pass's reading
 * @param readingUncertaintyMm the standard uncertainty of one gap reading as the passes have them;
 *     above zero
 * @param passes in the order they were filed; may be empty
 * @param goal what it is filed to
 */
public record Filing(
    Estimate gap, double readingUncertaintyMm, List<FilingPass> passes, FilingGoal goal) {
  /** The chance of passing the limit that a pass stays below. */
  public static final double CHANCE_BOUND = 0.01;

  private static final int PASSES_FOR_A_SPREAD = 3;

  /** Takes a copy of the passes and checks the uncertainties. */
  public Filing {
    Require.positive("standard uncertainty of a gap", readingUncertaintyMm, "mm");
    Require.positive("standard uncertainty of the gap", gap.standardUncertaintyMm(), "mm");
    passes = List.copyOf(passes);
  }

  /** What to do next. */
  public FilingAdvice next() {
    double remainderMm = goal.targetMm() - gap.valueMm();
    if (goal.largestMm() != null && gap.valueMm() > goal.largestMm()) {
      return new FilingAdvice.TooWide(gap.valueMm(), goal.largestMm());
    }
    if (remainderMm <= gap.expandedUncertaintyMm()) {
      return new FilingAdvice.Ready(remainderMm, gap.expandedUncertaintyMm());
    }
    if (passes.isEmpty()) {
      return new FilingAdvice.FileALittleAndMeasure(remainderMm);
    }
    return passes.size() < PASSES_FOR_A_SPREAD ? halfOf(remainderMm) : byChance();
  }

  private FilingAdvice halfOf(double remainderMm) {
    double removedMm = passes.stream().mapToDouble(FilingPass::removedMm).sum();
    double perTurnMm = removedMm / passes.stream().mapToLong(FilingPass::turns).sum();
    if (perTurnMm <= 0) {
      return new FilingAdvice.NothingRemoved(perTurnMm);
    }
    int turns = (int) (remainderMm / 2 / perTurnMm);
    return turns == 0
        ? new FilingAdvice.OneTurnTooMuch(perTurnMm, null)
        : new FilingAdvice.HalfTheRemainder(turns, perTurnMm, gap.valueMm() + turns * perTurnMm);
  }

  private FilingAdvice byChance() {
    RemovalRate rate = RemovalRate.of(passes, readingUncertaintyMm);
    if (rate.perTurnMm() <= 0) {
      return new FilingAdvice.NothingRemoved(rate.perTurnMm());
    }
    Overshoot overshoot =
        new Overshoot(
            gap.valueMm(), gap.standardUncertaintyMm(), readingUncertaintyMm, rate, goal.limitMm());
    int turns = overshoot.mostTurns(CHANCE_BOUND);
    return turns == 0
        ? new FilingAdvice.OneTurnTooMuch(rate.perTurnMm(), overshoot.chance(1))
        : new FilingAdvice.NextPass(
            turns, overshoot.expectedGapMm(turns), overshoot.chance(turns), rate);
  }
}
