package boreledger.drivers.pick;

/**
 * What is known of the gauge in free air, by which runs of samples that are no reading are told.
 */
final class FreeAir {
  private static final double NEAR_STOP_MM = 0.05;

  private final double leavesAboveMm;
  private final Plateau plateau;
  private Double stopMm;
  private Double pickedFloorMm;

  FreeAir(double leavesAboveMm, Plateau plateau) {
    this.leavesAboveMm = leavesAboveMm;
    this.plateau = plateau;
  }

  /** Learns the level at which the gauge rests on its stop. */
  void stopAt(double levelMm) {
    stopMm = levelMm;
  }

  /** Learns the lowest level of a reading. */
  void pickedAt(double floorMm) {
    pickedFloorMm = floorMm;
  }

  /** Forgets a stop that the gauge has gone beyond, for then it was none. */
  void checkStop(RockRun run) {
    if (stopMm != null && run.topMm() > stopMm + NEAR_STOP_MM) {
      stopMm = null;
    }
  }

  /**
   * Whether a run is free air all along: far above the reading before, at the stop, or one plateau
   * that is not at the height of the last reading.
   */
  boolean holds(RockRun run) {
    double floorMm = run.floorMm();
    boolean steady = plateau.isSteady(floorMm, run.topMm());
    return isAbove(floorMm, pickedFloorMm, leavesAboveMm)
        || isAbove(floorMm, run.leftFloorMm(), leavesAboveMm)
        || isAbove(floorMm, stopMm, -NEAR_STOP_MM)
        || steady && pickedFloorMm == null
        || steady && isAbove(floorMm, pickedFloorMm, Plateau.WELL_ABOVE_MM);
  }

  /** Whether at least half of a run is at the stop, so that it need not be an attempt at all. */
  boolean isMostOf(RockRun run) {
    return isAbove(run.medianMm(), stopMm, -NEAR_STOP_MM);
  }

  private static boolean isAbove(double floorMm, Double referenceMm, double byMm) {
    return referenceMm != null && floorMm > referenceMm + byMm;
  }
}
