package boreledger.calc.rock;

/**
 * One fit of the rocking law {@code y = D + q(t)²} with one diameter and one smooth {@code q}.
 *
 * <p>The law of a two-point gauge, {@code (D − 2ρ)/cos θ + 2ρ}, lies above {@code D} by {@code (D −
 * 2ρ)·(1/cos θ − 1)}, which is the square of a smooth odd function of the tilt; so neither the
 * anvil radius nor the size of the bore need be known.
 */
final class TiltFit {
  /** Parameters that no penalty restrains: a line, a harmonic (two) and the diameter. */
  private static final int FREE = 5;

  private final TiltProblem problem;
  private final TiltPrior prior;
  private final double[] weight;
  private final double[] coefficients;
  private final double diameterMm;
  private final TiltSolution solution;
  private final double noiseVariance;
  private final double criterion;

  TiltFit(
      TiltProblem problem,
      TiltPrior prior,
      double[] weight,
      double[] coefficients,
      double diameterMm,
      TiltSolution solution,
      double objective) {
    this.problem = problem;
    this.prior = prior;
    this.weight = weight;
    this.coefficients = coefficients;
    this.diameterMm = diameterMm;
    this.solution = solution;
    int used = 0;
    double logWeights = 0;
    for (double w : weight) {
      if (w > 0) {
        used++;
        logWeights += Math.log(w);
      }
    }
    int degreesOfFreedom = Math.max(1, used - FREE);
    noiseVariance = objective / degreesOfFreedom;
    int penalised = problem.basis().size() - (FREE - 1);
    criterion =
        degreesOfFreedom * Math.log(noiseVariance)
            + solution.logDeterminant()
            - penalised * Math.log(prior.stiffness())
            - logWeights;
  }

  TiltProblem problem() {
    return problem;
  }

  double[] weight() {
    return weight;
  }

  TiltPrior prior() {
    return prior;
  }

  double[] coefficients() {
    return coefficients;
  }

  double diameterMm() {
    return diameterMm;
  }

  /** Variance of a value's noise, in square millimetres. */
  double noiseVariance() {
    return noiseVariance;
  }

  /** Minus twice the restricted log likelihood of the prior, up to a constant. */
  double criterion() {
    return criterion;
  }

  /** Variance of the diameter in units of the noise variance. */
  double diameterVarianceShare() {
    return solution.diameterVariance(0);
  }

  /** The fitted root at sample {@code i}. */
  double root(int i) {
    return problem.basis().at(i, coefficients);
  }

  double residualMm(int i) {
    double q = root(i);
    return problem.trace().yMm()[i] - diameterMm - q * q;
  }

  /**
   * The residual of sample {@code i} over its standard deviation, as it is when this sample takes
   * no part in the fit.
   */
  double deletedResidual(int i) {
    double own = 1 / TiltSolver.weight(problem, prior, coefficients, i);
    double fromFit = predictionVariance(i);
    double variance = problem.used()[i] ? Math.max(own - fromFit, 1e-6 * own) : own + fromFit;
    return residualMm(i) / Math.sqrt(variance * noiseVariance);
  }

  /** Variance of the fitted value at sample {@code i} in units of the noise variance. */
  double predictionVariance(int i) {
    return solution.variance(problem.basis(), i, 2 * root(i));
  }
}
