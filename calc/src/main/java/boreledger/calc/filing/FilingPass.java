package boreledger.calc.filing;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;

/**
 * One pass with the file between two gap readings.
 *
 * @param turns turns of the crank or strokes; 1 or more, counted alike in all passes
 * @param beforeMm the gap read before it in millimetres; zero or more
 * @param afterMm the gap read after it; zero or more
 */
public record FilingPass(int turns, double beforeMm, double afterMm) {
  /** Checks every number. */
  public FilingPass {
    if (turns < 1) {
      throw new ImpossibleInput(turns + " turns in a filing pass, at least 1 needed");
    }
    Require.notNegative("gap before filing", beforeMm, "mm");
    Require.notNegative("gap after filing", afterMm, "mm");
  }

  /** What it took off, in millimetres; may come out below zero when the readings scatter. */
  public double removedMm() {
    return afterMm - beforeMm;
  }

  boolean sharesReadingWith(FilingPass next) {
    return afterMm == next.beforeMm;
  }
}
