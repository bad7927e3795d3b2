package boreledger.calc.rock;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** Small fits of known curves: {@code y = D + q(t)²} with noise that a sine of the index makes. */
final class TiltCase {
  static final double DIAMETER_MM = 0.125;
  static final double RAD_PER_S = 4;
  static final double KNOT_S = 0.1;

  private TiltCase() {}

  /** An even rock about an offset: a harmonic on a line, which no prior penalises. */
  static double evenRock(double tS) {
    return 0.6 * Math.sin(RAD_PER_S * (tS - 0.2)) + 0.05 + 0.01 * tS;
  }

  static double[] timesS(int samples) {
    double[] tS = new double[samples];
    for (int i = 0; i < samples; i++) {
      tS[i] = 0.06 * i + 0.01 * Math.sin(3 * i);
    }
    return tS;
  }

  static RockTrace trace(int samples, DoubleUnaryOperator root, double noiseMm) {
    double[] tS = timesS(samples);
    double[] yMm = new double[samples];
    for (int i = 0; i < samples; i++) {
      double q = root.applyAsDouble(tS[i]);
      yMm[i] = DIAMETER_MM + q * q + noiseMm * Math.sqrt(2) * Math.sin(1.7 * i * i);
    }
    return new RockTrace(tS, yMm);
  }

  /** Starts from the true curve and uses every sample. */
  static TiltFit fit(RockTrace trace, DoubleUnaryOperator root, TiltPrior prior) {
    SplineBasis basis = new SplineBasis(trace.tS(), KNOT_S);
    boolean[] used = new boolean[trace.size()];
    Arrays.fill(used, true);
    TiltProblem problem = new TiltProblem(trace, basis, used);
    double[] start = interpolated(trace, basis, root);
    return TiltSolver.fit(problem, prior, start, DIAMETER_MM, 20);
  }

  static TiltFit evenFit(double noiseMm) {
    TiltPrior prior = new TiltPrior(0.01, RAD_PER_S, 0.05);
    return fit(trace(150, TiltCase::evenRock, noiseMm), TiltCase::evenRock, prior);
  }

  private static double[] interpolated(
      RockTrace trace, SplineBasis basis, DoubleUnaryOperator root) {
    TiltEquations equations = new TiltEquations(basis, 0);
    for (int i = 0; i < trace.size(); i++) {
      equations.add(i, 1, 1, root.applyAsDouble(trace.tS()[i]));
    }
    equations.addPenalty(new TiltPrior(1e-6, RAD_PER_S, 0));
    return equations.solveCoefficients();
  }
}
