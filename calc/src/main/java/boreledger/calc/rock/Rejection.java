package boreledger.calc.rock;

/** Leaves out samples that the rest of the record contradicts, and takes back those it does not. */
final class Rejection {
  /** Four standard deviations: one good sample in 16,000. */
  private static final double REJECT = 4;

  private static final double TAKE_BACK = 3;

  /** Where the fit itself is vaguer than this, in noise variances, it vouches for no sample. */
  private static final double FIRM = 100;

  private static final double NEIGHBOUR_S = 0.15;

  private Rejection() {}

  /**
   * Which samples to use next; as before when nothing changes.
   *
   * @param takeBack whether a rejected sample may return
   */
  static boolean[] revise(TiltFit fit, boolean takeBack) {
    boolean[] used = fit.problem().used().clone();
    double[] size = new double[used.length];
    for (int i = 0; i < size.length; i++) {
      size[i] = Math.abs(fit.deletedResidual(i));
    }
    for (int i = 0; i < size.length; i++) {
      if (!used[i]) {
        used[i] = takeBack && size[i] < TAKE_BACK && fit.predictionVariance(i) < FIRM;
      } else if (size[i] > REJECT && worstAround(fit, size, i)) {
        used[i] = false;
      }
    }
    return used;
  }

  /** A glitch bends the curve at its neighbours too: only the worst of them goes in one round. */
  private static boolean worstAround(TiltFit fit, double[] size, int i) {
    double[] tS = fit.problem().trace().tS();
    for (int j = i; j >= 0 && tS[i] - tS[j] < NEIGHBOUR_S; j--) {
      if (fit.problem().used()[j] && size[j] > size[i]) {
        return false;
      }
    }
    for (int j = i; j < tS.length && tS[j] - tS[i] < NEIGHBOUR_S; j++) {
      if (fit.problem().used()[j] && size[j] > size[i]) {
        return false;
      }
    }
    return true;
  }
}
