package boreledger.drivers.pick;

import java.util.List;

/**
 * Cuts the ways into and out of the bore off a rocked reading. Between the first and the last pass
 * near the floor the highest level is that of a rock; what lies before and after is part of the
 * rocking as long as it is no higher.
 */
final class RockTrim {
  private static final double NEAR_FLOOR_MM = 0.005;
  private static final double NEAR_FLOOR_SHARE = 0.3;

  private RockTrim() {}

  /** The rocking in a run that is not empty; all of it when there is but one pass. */
  static List<Leveled> trim(List<Leveled> run) {
    List<Leveled> before = run;
    List<Leveled> trimmed = once(run);
    // The ways in and out count in what is near; without them that is judged more sharply.
    while (trimmed.size() < before.size()) {
      before = List.copyOf(trimmed);
      trimmed = once(before);
    }
    return trimmed;
  }

  private static List<Leveled> once(List<Leveled> run) {
    double nearMm = nearFloorMm(run);
    int first = 0;
    while (run.get(first).levelMm() > nearMm) {
      first++;
    }
    int end = run.size();
    while (run.get(end - 1).levelMm() > nearMm) {
      end--;
    }
    double peakMm =
        run.subList(first, end).stream().mapToDouble(Leveled::levelMm).max().orElseThrow();
    if (peakMm <= nearMm) {
      return run;
    }
    while (first > 0 && run.get(first - 1).levelMm() <= peakMm) {
      first--;
    }
    while (end < run.size() && run.get(end).levelMm() <= peakMm) {
      end++;
    }
    return run.subList(first, end);
  }

  private static double nearFloorMm(List<Leveled> run) {
    double[] sortedMm = run.stream().mapToDouble(Leveled::levelMm).sorted().toArray();
    double floorMm = sortedMm[0];
    double medianMm = sortedMm[sortedMm.length / 2];
    return floorMm + Math.max(NEAR_FLOOR_MM, NEAR_FLOOR_SHARE * (medianMm - floorMm));
  }
}
