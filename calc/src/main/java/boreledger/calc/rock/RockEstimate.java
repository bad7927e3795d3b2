package boreledger.calc.rock;

/** What a rocked record says about the diameter: a value with its uncertainty, or what it lacks. */
public sealed interface RockEstimate {
  /**
   * A value.
   *
   * @param tS the weighted mean time of the vertices, in seconds
   * @param valueMm the gauge's value square to the bore, in millimetres
   * @param standardUncertaintyMm its standard uncertainty from the samples, in millimetres
   * @param rocks how many times the gauge passed through square
   */
  record Found(double tS, double valueMm, double standardUncertaintyMm, int rocks)
      implements RockEstimate {}

  /**
   * Too little to give a value that could be trusted.
   *
   * @param rocks how many passes were seen
   * @param why one plain clause that says what to do, such as {@code 2 rocks seen, 4 needed}
   */
  record NotEnough(int rocks, String why) implements RockEstimate {}
}
