package boreledger.drivers.profile;

/** How samples become a reading, with the rule's parameters. */
public sealed interface PickSpec {
  /** The rule's name in a profile: {@code press}, {@code settle} or {@code rock}. */
  String rule();

  /**
   * Each frame is one reading.
   *
   * @param stuckAfter how many equal frames in a row raise the caution of a stuck key
   */
  record Press(int stuckAfter) implements PickSpec {
    @Override
    public String rule() {
      return "press";
    }
  }

  /**
   * Hold still.
   *
   * @param forS how long, in seconds
   * @param withinMm the largest spread of samples that counts as still, in millimetres
   * @param moveMm how far the value must move away before the next reading, in millimetres
   */
  record Settle(double forS, double withinMm, double moveMm) implements PickSpec {
    @Override
    public String rule() {
      return "settle";
    }
  }

  /**
   * Minima while rocking.
   *
   * @param leavesAboveMm a sample this far above the reading's smallest one means that the gauge
   *     has left the bore, in millimetres
   * @param leavesAfterS a silence this long means the same, in seconds
   * @param minRocks the fewest minima that make a reading
   */
  record Rock(double leavesAboveMm, double leavesAfterS, int minRocks) implements PickSpec {
    /**
     * What a profile gets that gives no parameters: a gauge 150 mm wide reads 1.5 mm more at a tilt
     * of 8 degrees, so 2 mm more is no rocking.
     */
    public static final Rock DEFAULT = new Rock(2.0, 1.5, 3);

    @Override
    public String rule() {
      return "rock";
    }
  }
}
