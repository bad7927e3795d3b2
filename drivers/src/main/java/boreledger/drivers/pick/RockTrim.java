package boreledger.drivers.pick;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Cuts the ways into and out of the bore off a rocked reading. Between the first and the last pass
 * near the floor all is rocking. What lies before and after belongs to it as long as it is no
 * higher than that, and moves not much faster.
 */
final class RockTrim {
  private static final double NEAR_FLOOR_MM = 0.005;
  private static final double NEAR_FLOOR_SHARE = 0.3;
  private static final double MUCH_FASTER = 2;

  private final List<Leveled> run;
  private final int first;
  private final int last;

  private RockTrim(List<Leveled> run) {
    this.run = run;
    Levels levels = Levels.of(run);
    double nearMm = NEAR_FLOOR_SHARE * (levels.medianMm() - levels.floorMm());
    double limitMm = levels.floorMm() + Math.max(NEAR_FLOOR_MM, nearMm);
    int from = 0;
    while (levelMm(from) > limitMm) {
      from++;
    }
    int to = run.size() - 1;
    while (levelMm(to) > limitMm) {
      to--;
    }
    first = from;
    last = to;
  }

  /** The rocking in a run that is not empty. */
  static List<Leveled> trim(List<Leveled> run) {
    List<Leveled> before = run;
    List<Leveled> trimmed = new RockTrim(run).once();
    // The ways in and out count in what is near; without them that is judged more sharply.
    while (trimmed.size() < before.size()) {
      before = List.copyOf(trimmed);
      trimmed = new RockTrim(before).once();
    }
    return trimmed;
  }

  private List<Leveled> once() {
    double peakMm =
        IntStream.rangeClosed(first, last).mapToDouble(this::levelMm).max().orElseThrow();
    double[] speeds =
        IntStream.range(first, last).mapToDouble(i -> speed(i, i + 1)).sorted().toArray();
    double fastest = speeds.length == 0 ? 0 : speeds[speeds.length * 19 / 20];
    int from = first;
    while (from > 0 && belongs(from, from - 1, peakMm, fastest)) {
      from--;
    }
    int to = last;
    while (to < run.size() - 1 && belongs(to, to + 1, peakMm, fastest)) {
      to++;
    }
    return run.subList(from, to + 1);
  }

  private boolean belongs(int inner, int outer, double peakMm, double fastest) {
    return levelMm(outer) <= peakMm && speed(inner, outer) <= MUCH_FASTER * fastest;
  }

  /** In millimetres a sample: samples of one chunk have one time, which no rate could be had of. */
  private double speed(int one, int other) {
    return Math.abs(levelMm(one) - levelMm(other));
  }

  private double levelMm(int index) {
    return run.get(index).levelMm();
  }
}
