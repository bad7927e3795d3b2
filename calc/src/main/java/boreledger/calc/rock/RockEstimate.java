package boreledger.calc.rock;

import java.util.List;

/** What a rocked record says about the diameter: a value with its uncertainty, or what it lacks. */
public sealed interface RockEstimate {
  /** How many times the gauge passed through square. */
  int rocks();

  /**
   * A value.
   *
   * @param tS the weighted mean time of the vertices, in seconds
   * @param valueMm the gauge's value square to the bore, in millimetres
   * @param standardUncertaintyMm its standard uncertainty from the samples, in millimetres
   * @param rocks how many times the gauge passed through square
   * @param vertices those passes in order of time, to be shown; empty when not kept
   * @param rejected how many samples did not fit and were left out
   */
  record Found(
      double tS,
      double valueMm,
      double standardUncertaintyMm,
      int rocks,
      List<RockVertex> vertices,
      int rejected)
      implements RockEstimate {
    /** Copies the list. */
    public Found {
      vertices = List.copyOf(vertices);
    }

    /** A value without what only a display needs. */
    public Found(double tS, double valueMm, double standardUncertaintyMm, int rocks) {
      this(tS, valueMm, standardUncertaintyMm, rocks, List.of(), 0);
    }
  }

  /**
   * Too little to give a value that could be trusted.
   *
   * @param rocks how many passes were seen
   * @param why one plain clause that says what to do, such as {@code 2 rocks seen, 4 needed}
   */
  record NotEnough(int rocks, String why) implements RockEstimate {}
}
