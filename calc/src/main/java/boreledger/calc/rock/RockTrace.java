package boreledger.calc.rock;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The samples of one record as columns: finite values, times strictly ascending.
 *
 * @param tS times in seconds
 * @param yMm values in millimetres
 */
record RockTrace(double[] tS, double[] yMm) {
  /** The turn of a rock is passed in less. */
  private static final double STEADY_S = 0.25;

  /**
   * Takes over what can be used; a sample that is not finite or not later than the last is left.
   */
  static RockTrace of(List<RockSample> samples) {
    double[] t = new double[samples.size()];
    double[] y = new double[samples.size()];
    int n = 0;
    for (RockSample sample : samples) {
      boolean finite = Double.isFinite(sample.tS()) && Double.isFinite(sample.valueMm());
      if (finite && (n == 0 || sample.tS() >= t[n - 1])) {
        n = n > 0 && sample.tS() == t[n - 1] ? n - 1 : n;
        t[n] = sample.tS();
        y[n++] = sample.valueMm();
      }
    }
    return new RockTrace(Arrays.copyOf(t, n), Arrays.copyOf(y, n));
  }

  int size() {
    return tS.length;
  }

  double durationS() {
    return tS[tS.length - 1] - tS[0];
  }

  /** The middle of the times between neighbouring samples, in seconds; at least two samples. */
  double medianGapS() {
    double[] gap = new double[tS.length - 1];
    for (int i = 0; i < gap.length; i++) {
      gap[i] = tS[i + 1] - tS[i];
    }
    Arrays.sort(gap);
    return gap[gap.length / 2];
  }

  /** Keeps samples that are at least {@code spacingS} apart. */
  RockTrace thinned(double spacingS) {
    double[] t = new double[size()];
    double[] y = new double[size()];
    int n = 0;
    for (int i = 0; i < size(); i++) {
      if (n == 0 || tS[i] >= t[n - 1] + spacingS) {
        t[n] = tS[i];
        y[n++] = yMm[i];
      }
    }
    return new RockTrace(Arrays.copyOf(t, n), Arrays.copyOf(y, n));
  }

  /** Keeps samples from one time to another, both included. */
  RockTrace between(double fromS, double toS) {
    int from = 0;
    while (from < size() && tS[from] < fromS) {
      from++;
    }
    int to = size();
    while (to > from && tS[to - 1] > toS) {
      to--;
    }
    return new RockTrace(Arrays.copyOfRange(tS, from, to), Arrays.copyOfRange(yMm, from, to));
  }

  /**
   * Leaves off a steady value at either end, as free air or a waiting hand gives it.
   *
   * @param withinMm how far a steady value may wander
   */
  RockTrace withoutSteadyEnds(double withinMm) {
    if (size() == 0) {
      return this;
    }
    int from = steady(0, 1, withinMm);
    int to = size() - steady(size() - 1, -1, withinMm);
    return from < to ? between(tS[from], tS[to - 1]) : between(1, 0);
  }

  /** How many samples from {@code end} inward are steady; a single glitch among them is. */
  private int steady(int end, int inward, double withinMm) {
    int last = end;
    int i = end;
    for (; i >= 0 && i < size() && Math.abs(i - last) <= 2; i += inward) {
      if (Math.abs(yMm[i] - yMm[end]) <= withinMm) {
        last = i;
      }
    }
    boolean lasting = Math.abs(tS[last] - tS[end]) >= STEADY_S;
    return lasting ? Math.abs(last - end) + 1 : 0;
  }

  /** Whether a value is above neither of its two neighbours. */
  boolean isLocalMinimum(int i) {
    return i > 0 && i + 1 < size() && yMm[i] <= yMm[i - 1] && yMm[i] <= yMm[i + 1];
  }

  /** Values not above either neighbour, ascending. */
  double[] localMinimaMm() {
    return IntStream.range(0, size())
        .filter(this::isLocalMinimum)
        .mapToDouble(i -> yMm[i])
        .sorted()
        .toArray();
  }
}
