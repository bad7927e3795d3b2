package boreledger.calc.rock;

/** Lets the record itself say how stiff, how fast and how jittery it is: the likeliest prior. */
final class PriorSearch {
  private static final int STEPS = 4;
  private static final int MOST_ROUNDS = 14;
  private static final double GAIN = 0.01;
  private static final double SMALLEST_STEP = 0.2;
  private static final double[] LOWEST = {-30, -1, -5};
  private static final double[] HIGHEST = {40, 3.5, 5};

  private TiltFit best;
  private double[] at;

  private PriorSearch(TiltFit from) {
    best = from;
    TiltPrior prior = from.prior();
    at =
        new double[] {
          Math.log(prior.stiffness()), Math.log(prior.rockRadPerS()), Math.log(prior.jitterSPerMm())
        };
  }

  /** Searches all three along their logarithms, from {@code step} down to a tenth of it. */
  static TiltFit around(TiltFit from, double step) {
    PriorSearch search = new PriorSearch(from);
    double[] width = {2 * step, 0.2 * step, step};
    for (int round = 0; round < MOST_ROUNDS && width[0] >= SMALLEST_STEP; round++) {
      if (!search.sweep(width)) {
        for (int axis = 0; axis < width.length; axis++) {
          width[axis] /= 2;
        }
      }
    }
    return search.best;
  }

  /** Searches the stiffness alone. */
  static TiltFit alongStiffness(TiltFit from, double step) {
    PriorSearch search = new PriorSearch(from);
    for (int sign = 1; sign >= -1; sign -= 2) {
      boolean better = true;
      boolean any = false;
      while (better) {
        better = search.move(0, sign * step);
        any |= better;
      }
      if (any) {
        break;
      }
    }
    return search.best;
  }

  private boolean sweep(double[] width) {
    boolean any = false;
    for (int axis = 0; axis < width.length; axis++) {
      any |= move(axis, width[axis]) || move(axis, -width[axis]);
    }
    return any;
  }

  private boolean move(int axis, double by) {
    double[] to = at.clone();
    to[axis] += by;
    if (to[axis] < LOWEST[axis] || to[axis] > HIGHEST[axis]) {
      return false;
    }
    TiltPrior prior = new TiltPrior(Math.exp(to[0]), Math.exp(to[1]), Math.exp(to[2]));
    TiltFit fit = TiltSolver.fit(best, best.problem(), prior, STEPS);
    if (fit == null || !(fit.criterion() < best.criterion() - GAIN)) {
      return false;
    }
    best = fit;
    at = to;
    return true;
  }
}
