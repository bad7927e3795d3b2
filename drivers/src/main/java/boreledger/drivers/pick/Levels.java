package boreledger.drivers.pick;

import java.util.List;

/** Where the levels of samples lie, in millimetres. */
record Levels(double floorMm, double medianMm) {
  // A gauge that is rocked is near the floor for a quarter of the time; glitches are rarer.
  private static final int LOWEST_ONE_IN = 50;

  /**
   * The floor and the median of samples, of which there is at least one.
   *
   * <p>The floor is the lowest level; of fifty samples or more the lowest two in a hundred are
   * passed over, so that glitches next to each other do not make a floor.
   */
  static Levels of(List<Leveled> samples) {
    double[] sortedMm = samples.stream().mapToDouble(Leveled::levelMm).sorted().toArray();
    int count = sortedMm.length;
    return new Levels(sortedMm[count / LOWEST_ONE_IN], sortedMm[count / 2]);
  }
}
