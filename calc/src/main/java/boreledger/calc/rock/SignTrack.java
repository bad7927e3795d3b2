package boreledger.calc.rock;

import java.util.Arrays;

/**
 * Gives unsigned roots the signs that make the smoothest run.
 *
 * <p>Smooth means: least sum of absolute third differences. The sum links only four neighbours, so
 * dynamic programming over the last three signs finds the best of all sign patterns.
 */
final class SignTrack {
  private static final int REACH = 3;
  private static final int STATES = 1 << REACH;

  private SignTrack() {}

  /**
   * @param tS ascending times in seconds; at least four
   * @param root roots of either sign's size, not negative
   * @return the roots with signs; the first sign of all is arbitrary
   */
  static double[] signed(double[] tS, double[] root) {
    int n = root.length;
    byte[][] from = new byte[n][STATES];
    double[] cost = new double[STATES];
    for (int i = REACH; i < n; i++) {
      cost = advance(cost, thirdDifference(tS, i), root, i, from[i]);
    }
    int state = 0;
    for (int s = 1; s < STATES; s++) {
      state = cost[s] < cost[state] ? s : state;
    }
    double[] signed = new double[n];
    for (int i = n - 1; i >= REACH; i--) {
      signed[i] = negative(state, 0) ? -root[i] : root[i];
      state = from[i][state];
    }
    for (int back = 0; back < REACH; back++) {
      int i = REACH - 1 - back;
      signed[i] = negative(state, back) ? -root[i] : root[i];
    }
    return signed;
  }

  private static double[] advance(double[] cost, double[] tap, double[] root, int i, byte[] from) {
    double[] next = new double[STATES];
    Arrays.fill(next, Double.POSITIVE_INFINITY);
    for (int s = 0; s < STATES; s++) {
      double before = 0;
      for (int back = 0; back < REACH; back++) {
        double part = tap[back + 1] * root[i - 1 - back];
        before += negative(s, back) ? -part : part;
      }
      for (int bit = 0; bit < 2; bit++) {
        double own = tap[0] * root[i];
        double sum = cost[s] + Math.abs(before + (bit == 1 ? -own : own));
        int to = ((s << 1) | bit) & (STATES - 1);
        if (sum < next[to]) {
          next[to] = sum;
          from[to] = (byte) s;
        }
      }
    }
    return next;
  }

  private static boolean negative(int state, int back) {
    return (state >> back & 1) == 1;
  }

  /** Taps of the third divided difference ending at {@code i}, scaled to 1, −3, 3, −1 when even. */
  private static double[] thirdDifference(double[] tS, int i) {
    double[] tap = new double[REACH + 1];
    double size = 0;
    for (int a = 0; a <= REACH; a++) {
      double product = 1;
      for (int b = 0; b <= REACH; b++) {
        product *= a == b ? 1 : tS[i - a] - tS[i - b];
      }
      tap[a] = 1 / product;
      size += Math.abs(tap[a]);
    }
    for (int a = 0; a <= REACH; a++) {
      tap[a] *= STATES / size;
    }
    return tap;
  }
}
