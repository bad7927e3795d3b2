package boreledger.calc.rock;

import java.util.Arrays;

/**
 * Finds where a fit may start: which way the gauge leaned at every sample.
 *
 * <p>The lowest value is no safe guess of the diameter (a glitch may be lower), so several of the
 * lowest minima are tried, on a record thinned to a few samples per rock, and the likeliest wins.
 */
final class TiltStart {
  private static final double[] SPACINGS_S = {0.056, 0.112};
  private static final double KNOT_S = 0.1;
  private static final int CANDIDATES = 5;
  private static final double CANDIDATE_STEP_MM = 0.002;
  private static final int COMPANIONS = 2;
  private static final double COMPANY_MM = 0.05;
  private static final double BELOW_MM = 0.0005;
  private static final double ROOT_SCALE = 0.03;
  private static final int ROOT_ROUNDS = 6;
  private static final double[] SCALES_MM = {0.03, 0.01, 0.005, 0.003, 0.003, 0.003};
  private static final double REJECT_MM = 0.010;
  private static final int FEWEST = 12;
  private static final double SOFT = 1e-4;
  private static final int SETTLINGS = 2;
  private static final int REPAIRS = 6;
  private static final double MANY_MISFITS = 0.05;

  /** So many are no matter of a few signs: there was no rocking, and repairs take long to fail. */
  private static final double HOPELESS_MISFITS = 0.2;

  private static final int NEAR = 4;
  private static final double OUTLIER_RANGE_MM = 0.6;

  private final RockTrace trace;
  private final SplineBasis basis;

  private TiltStart(RockTrace trace, double knotS) {
    this.trace = trace;
    this.basis = new SplineBasis(trace.tS(), knotS);
  }

  /** The likeliest start, on a thinned record; null when the record shows no rocking. */
  static TiltFit likeliest(RockTrace full) {
    Leaning best = null;
    for (double spacingS : SPACINGS_S) {
      RockTrace thin = full.thinned(spacingS);
      if (thin.size() >= FEWEST) {
        TiltStart start = new TiltStart(thin, KNOT_S);
        for (double candidateMm : start.candidatesMm()) {
          best = better(best, start.leaning(candidateMm - BELOW_MM));
        }
      }
    }
    return best == null ? null : best.start().repaired(best).fit();
  }

  /** One answer to which way the gauge leaned. */
  private record Leaning(
      TiltStart start, double[] signed, double floorMm, TiltFit fit, double score) {}

  private static Leaning better(Leaning one, Leaning other) {
    return one == null || other != null && other.score() < one.score() ? other : one;
  }

  /**
   * Where a glitch made a pass look like a turn, or a turn like a pass, all signs from there on are
   * wrong and many samples do not fit: turns them back at the minima nearby.
   */
  private Leaning repaired(Leaning leaning) {
    Leaning best = leaning;
    if (misfits(best.fit()) > HOPELESS_MISFITS) {
      return best;
    }
    for (int round = 0; round < REPAIRS && misfits(best.fit()) > MANY_MISFITS; round++) {
      Leaning before = best;
      for (int i = 1; i < trace.size(); i++) {
        boolean minimum = trace.isLocalMinimum(i) || trace.isLocalMinimum(i - 1);
        if (minimum && misfitNear(before.fit(), i)) {
          best = better(best, leaning(before.floorMm(), turnedFrom(before.signed(), i)));
        }
      }
      if (best == before) {
        break;
      }
    }
    return best;
  }

  private static double misfits(TiltFit fit) {
    return 1 - (double) fit.problem().usedCount() / fit.problem().trace().size();
  }

  private static boolean misfitNear(TiltFit fit, int i) {
    boolean[] used = fit.problem().used();
    boolean near = false;
    for (int j = Math.max(0, i - NEAR); j < Math.min(used.length, i + NEAR); j++) {
      near |= !used[j];
    }
    return near;
  }

  private static double[] turnedFrom(double[] signed, int from) {
    double[] turned = signed.clone();
    for (int i = from; i < turned.length; i++) {
      turned[i] = -turned[i];
    }
    return turned;
  }

  /** Carries a fit over to another record of the same time and finer splines. */
  static TiltFit transfer(TiltFit from, RockTrace full, double knotS) {
    TiltStart start = new TiltStart(full, knotS);
    double[] target = new double[full.size()];
    double[] weight = new double[full.size()];
    for (int i = 0; i < target.length; i++) {
      target[i] = from.problem().basis().valueAt(full.tS()[i], from.coefficients());
    }
    Arrays.fill(weight, 1);
    double finer = Math.pow(from.problem().basis().spacingS() / knotS, 7);
    TiltPrior prior = from.prior().withStiffness(from.prior().stiffness() * finer);
    double[] c = start.smoothed(prior.withStiffness(1e-3), target, weight);
    return c == null ? null : start.settled(prior, c, from.diameterMm());
  }

  /** The lowest minima that others lie close above: a lonely one is a glitch or free air. */
  private double[] candidatesMm() {
    double[] minima = trace.localMinimaMm();
    double[] chosen = new double[CANDIDATES];
    int n = 0;
    for (int i = 0; i + COMPANIONS < minima.length && n < CANDIDATES; i++) {
      boolean lonely = minima[i + COMPANIONS] - minima[i] > COMPANY_MM;
      if (!lonely && (n == 0 || minima[i] - chosen[n - 1] >= CANDIDATE_STEP_MM)) {
        chosen[n++] = minima[i];
      }
    }
    return Arrays.copyOf(chosen, n);
  }

  private Leaning leaning(double floorMm) {
    double[] root = new double[trace.size()];
    for (int i = 0; i < root.length; i++) {
      root[i] = Math.sqrt(Math.max(0, trace.yMm()[i] - floorMm));
    }
    return leaning(floorMm, SignTrack.signed(trace.tS(), root));
  }

  private Leaning leaning(double floorMm, double[] signed) {
    TiltFit fit = from(floorMm, signed);
    for (int round = 0; round < SETTLINGS && fit != null; round++) {
      TiltFit apt = PriorSearch.alongStiffness(fit, 2);
      fit = settled(apt.prior(), apt.coefficients(), apt.diameterMm());
    }
    return fit == null ? null : new Leaning(this, signed, floorMm, fit, score(fit));
  }

  private TiltFit from(double floorMm, double[] signed) {
    TiltPrior prior = new TiltPrior(0.01, Math.PI * rate(signed), 0.1);
    double[] weight = new double[signed.length];
    Arrays.fill(weight, 1);
    double[] c = smoothed(prior, signed, weight);
    for (int round = 0; round < ROOT_ROUNDS && c != null; round++) {
      for (int i = 0; i < weight.length; i++) {
        double ratio = (signed[i] - basis.at(i, c)) / ROOT_SCALE;
        weight[i] = (0.01 + signed[i] * signed[i]) / (1 + ratio * ratio);
      }
      c = smoothed(prior, signed, weight);
    }
    if (c == null) {
      return null;
    }
    TiltFit robust =
        TiltSolver.fitRobustly(all(), prior.withStiffness(SOFT), c, floorMm, SCALES_MM);
    return robust == null
        ? null
        : settled(robust.prior(), robust.coefficients(), robust.diameterMm());
  }

  /** Crossings per second, at least two over the record. */
  private double rate(double[] signed) {
    int crossings = 0;
    for (int i = 1; i < signed.length; i++) {
      crossings += signed[i] * signed[i - 1] < 0 ? 1 : 0;
    }
    return Math.max(2, crossings) / trace.durationS();
  }

  private double[] smoothed(TiltPrior prior, double[] target, double[] weight) {
    TiltEquations equations = new TiltEquations(basis, 0);
    for (int i = 0; i < target.length; i++) {
      equations.add(i, weight[i], 1, target[i]);
    }
    equations.addPenalty(prior);
    return equations.solveCoefficients();
  }

  private TiltProblem all() {
    boolean[] used = new boolean[trace.size()];
    Arrays.fill(used, true);
    return new TiltProblem(trace, basis, used);
  }

  /** Leaves out what lies far from the curve and fits the rest. */
  private TiltFit settled(TiltPrior prior, double[] c, double diameterMm) {
    boolean[] used = new boolean[trace.size()];
    for (int i = 0; i < used.length; i++) {
      double q = basis.at(i, c);
      used[i] = Math.abs(trace.yMm()[i] - diameterMm - q * q) < REJECT_MM;
    }
    TiltProblem problem = all().withUsed(used);
    return problem.usedCount() < FEWEST
        ? null
        : TiltSolver.fit(problem, prior, c, diameterMm, SCALES_MM.length);
  }

  /** Minus twice the log likelihood per sample, a rejected one being likely anywhere alike. */
  private static double score(TiltFit fit) {
    int size = fit.problem().trace().size();
    int rejected = size - fit.problem().usedCount();
    return (fit.criterion() + rejected * 2 * Math.log(OUTLIER_RANGE_MM)) / size;
  }
}
