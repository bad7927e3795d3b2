package boreledger.calc.rock;

/** Gauss–Newton iteration, damped by halving, for the rocking law. */
final class TiltSolver {
  private static final int HALVINGS = 8;
  private static final double CONVERGED = 1e-6;

  private final TiltProblem problem;
  private final TiltPrior prior;
  private double[] coefficients;
  private double diameterMm;
  private TiltSolution solution;
  private double objective;

  private TiltSolver(TiltProblem problem, TiltPrior prior, double[] start, double diameterMm) {
    this.problem = problem;
    this.prior = prior;
    this.coefficients = start;
    this.diameterMm = diameterMm;
  }

  /** Fits with weights that follow from the prior; null when the equations are singular. */
  static TiltFit fit(TiltFit from, TiltProblem problem, TiltPrior prior, int steps) {
    return fit(problem, prior, from.coefficients(), from.diameterMm(), steps);
  }

  static TiltFit fit(
      TiltProblem problem, TiltPrior prior, double[] start, double diameterMm, int steps) {
    TiltSolver solver = new TiltSolver(problem, prior, start, diameterMm);
    double[] weight = null;
    boolean moving = true;
    for (int k = 0; k < steps && moving; k++) {
      weight = solver.jitterWeights();
      moving = solver.step(weight);
    }
    return solver.solution == null ? null : solver.result(weight);
  }

  /**
   * Fits with weights that let go of samples far from the curve, tighter with every scale.
   *
   * @param scalesMm distances at which a sample has lost three quarters of its weight
   */
  static TiltFit fitRobustly(
      TiltProblem problem, TiltPrior prior, double[] start, double diameterMm, double... scalesMm) {
    TiltSolver solver = new TiltSolver(problem, prior, start, diameterMm);
    double[] weight = null;
    for (double scaleMm : scalesMm) {
      weight = solver.robustWeights(scaleMm);
      solver.step(weight);
    }
    return solver.solution == null ? null : solver.result(weight);
  }

  /**
   * Frees the diameter from stretch to stretch, with all else as in a fit; null when singular.
   *
   * @param stretch the stretch each sample belongs to, from 0
   */
  static TiltSolution split(TiltFit fit, int[] stretch, int count) {
    TiltSolver solver =
        new TiltSolver(fit.problem(), fit.prior(), fit.coefficients(), fit.diameterMm());
    return solver.linearised(fit.weight(), stretch, count);
  }

  private TiltFit result(double[] weight) {
    return new TiltFit(problem, prior, weight, coefficients, diameterMm, solution, objective);
  }

  /** A time that is off by δt puts a value off by its slope times δt. */
  static double weight(TiltProblem problem, TiltPrior prior, double[] coefficients, int i) {
    SplineBasis basis = problem.basis();
    double slope = 2 * basis.at(i, coefficients) * basis.slopeAt(i, coefficients);
    double ratio = prior.jitterSPerMm() * slope;
    return 1 / (1 + ratio * ratio);
  }

  private double[] jitterWeights() {
    double[] weight = new double[problem.trace().size()];
    for (int i = 0; i < weight.length; i++) {
      weight[i] = problem.used()[i] ? weight(problem, prior, coefficients, i) : 0;
    }
    return weight;
  }

  private double[] robustWeights(double scaleMm) {
    double[] weight = new double[problem.trace().size()];
    for (int i = 0; i < weight.length; i++) {
      double q = problem.basis().at(i, coefficients);
      double ratio = (problem.trace().yMm()[i] - diameterMm - q * q) / scaleMm;
      double root = 1 / (1 + ratio * ratio);
      weight[i] = root * root;
    }
    return weight;
  }

  /** One step; false when it no longer pays. */
  private boolean step(double[] weight) {
    TiltSolution next = linearised(weight, new int[weight.length], 1);
    if (next == null) {
      return false;
    }
    solution = next;
    double before = objective(weight, coefficients, diameterMm);
    objective = before;
    double part = 1;
    for (int k = 0; k < HALVINGS; k++) {
      double[] c = new double[coefficients.length];
      for (int j = 0; j < c.length; j++) {
        c[j] = coefficients[j] + part * (next.coefficients()[j] - coefficients[j]);
      }
      double d = diameterMm + part * (next.diameterMm()[0] - diameterMm);
      double after = objective(weight, c, d);
      if (after <= before) {
        coefficients = c;
        diameterMm = d;
        objective = after;
        return before - after > CONVERGED * before;
      }
      part /= 2;
    }
    return false;
  }

  private TiltSolution linearised(double[] weight, int[] stretch, int count) {
    TiltEquations equations = new TiltEquations(problem.basis(), count);
    for (int i = 0; i < weight.length; i++) {
      if (weight[i] > 0) {
        double q = problem.basis().at(i, coefficients);
        equations.add(i, weight[i], 2 * q, stretch[i], problem.trace().yMm()[i] + q * q);
      }
    }
    equations.addPenalty(prior);
    return equations.solve();
  }

  private double objective(double[] weight, double[] c, double d) {
    double sum = 0;
    for (int i = 0; i < weight.length; i++) {
      if (weight[i] > 0) {
        double q = problem.basis().at(i, c);
        double residual = problem.trace().yMm()[i] - d - q * q;
        sum += weight[i] * residual * residual;
      }
    }
    double[] tap = prior.taps(problem.basis().spacingS());
    for (int i = 0; i + tap.length <= c.length; i++) {
      double departure = 0;
      for (int j = 0; j < tap.length; j++) {
        departure += tap[j] * c[i + j];
      }
      sum += prior.stiffness() * departure * departure;
    }
    return sum;
  }
}
