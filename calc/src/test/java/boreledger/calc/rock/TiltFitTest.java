package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

/** Dense linear algebra by Apache Commons Math 3.6.1 is the other opinion. */
class TiltFitTest {

  @Test
  void anEvenRockWithoutNoiseIsFittedExactly() {
    TiltFit fit = TiltCase.evenFit(0);
    assertEquals(TiltCase.DIAMETER_MM, fit.diameterMm(), 1e-9);
    for (int i = 0; i < fit.problem().trace().size(); i++) {
      double q = TiltCase.evenRock(fit.problem().trace().tS()[i]);
      assertEquals(q, fit.root(i), 1e-6);
      assertEquals(0, fit.residualMm(i), 1e-6);
    }
  }

  @Test
  void noiseVarianceIsThatOfTheNoise() {
    TiltFit even = TiltCase.evenFit(0.001);
    TiltFit fit = TiltSolver.fit(even, even.problem(), even.prior().withStiffness(1e6), 20);
    assertEquals(1e-6, fit.noiseVariance(), 2e-7);
    assertEquals(TiltCase.DIAMETER_MM, fit.diameterMm(), 4 * deviation(fit));
  }

  private static double deviation(TiltFit fit) {
    return Math.sqrt(fit.noiseVariance() * fit.diameterVarianceShare());
  }

  /** The weight of a sample falls with the slope of the value: one over 1 + (jitter·slope)². */
  @Test
  void weightsFollowTheSlopeOfTheValue() {
    TiltFit fit = TiltCase.evenFit(0.001);
    double h = 1e-5;
    SplineBasis basis = fit.problem().basis();
    for (int i = 1; i + 1 < fit.weight().length; i++) {
      double tS = fit.problem().trace().tS()[i];
      double later = basis.valueAt(tS + h, fit.coefficients());
      double sooner = basis.valueAt(tS - h, fit.coefficients());
      double slope = (later * later - sooner * sooner) / (2 * h);
      double expected = 1 / (1 + 0.05 * 0.05 * slope * slope);
      assertEquals(expected, fit.weight()[i], 1e-5, "sample " + i);
    }
  }

  @Test
  void criterionAndVariancesAgreeWithDenseAlgebra() {
    RockTrace trace = TiltCase.trace(150, PriorSearchTest::wanderingRock, 0.001);
    TiltFit fit = TiltCase.fit(trace, PriorSearchTest::wanderingRock, new TiltPrior(0.01, 4, 0.05));
    SplineBasis basis = fit.problem().basis();
    int size = basis.size();
    int samples = fit.weight().length;
    RealMatrix information = MatrixUtils.createRealMatrix(size + 1, size + 1);
    double squares = 0;
    double logWeights = 0;
    for (int i = 0; i < samples; i++) {
      double[] row = new double[size + 1];
      for (int j = 0; j < SplineBasis.SUPPORT; j++) {
        row[basis.start(i) + j] = 2 * fit.root(i) * basis.values(i)[j];
      }
      row[size] = 1;
      information = plus(information, row, fit.weight()[i]);
      squares += fit.weight()[i] * fit.residualMm(i) * fit.residualMm(i);
      logWeights += Math.log(fit.weight()[i]);
    }
    double stiffness = fit.prior().stiffness();
    RealVector coefficients = new ArrayRealVector(fit.coefficients());
    for (int i = 0; i + 5 <= size; i++) {
      double[] row = new double[size + 1];
      System.arraycopy(fit.prior().taps(basis.spacingS()), 0, row, i, 5);
      information = plus(information, row, stiffness);
      double departure = new ArrayRealVector(row).getSubVector(0, size).dotProduct(coefficients);
      squares += stiffness * departure * departure;
    }
    LUDecomposition solved = new LUDecomposition(information);
    RealMatrix inverse = solved.getSolver().getInverse();
    double noise = squares / (samples - 5);
    double criterion =
        (samples - 5) * Math.log(noise)
            + Math.log(solved.getDeterminant())
            - (size - 4) * Math.log(stiffness)
            - logWeights;
    assertEquals(noise, fit.noiseVariance(), 1e-9 * noise);
    assertEquals(criterion, fit.criterion(), 1e-3);
    assertEquals(inverse.getEntry(size, size), fit.diameterVarianceShare(), 1e-6);
    double[] row = new double[size + 1];
    for (int j = 0; j < SplineBasis.SUPPORT; j++) {
      row[basis.start(40) + j] = 2 * fit.root(40) * basis.values(40)[j];
    }
    row[size] = 1;
    RealVector at = new ArrayRealVector(row);
    assertEquals(at.dotProduct(inverse.operate(at)), fit.predictionVariance(40), 1e-6);
  }

  private static RealMatrix plus(RealMatrix sum, double[] row, double weight) {
    RealVector vector = new ArrayRealVector(row);
    return sum.add(vector.outerProduct(vector).scalarMultiply(weight));
  }

  /**
   * What a sample is off by without itself is the same whether it is left out or only thought so.
   */
  @Test
  void deletedResidualIsThatOfAFitWithoutTheSample() {
    TiltFit with = TiltCase.evenFit(0.001);
    int checked = 0;
    for (int i = 20; i < 130; i += 7) {
      boolean[] used = with.problem().used().clone();
      used[i] = false;
      TiltFit without = TiltSolver.fit(with, with.problem().withUsed(used), with.prior(), 20);
      assertEquals(149, without.problem().usedCount());
      double expected = without.deletedResidual(i) * Math.sqrt(without.noiseVariance());
      double deleted = with.deletedResidual(i) * Math.sqrt(with.noiseVariance());
      assertEquals(expected, deleted, 0.02 * Math.abs(expected) + 2e-6, "sample " + i);
      checked++;
    }
    assertTrue(checked > 10);
  }

  /** From a root far too small a whole step overshoots: (q² + y) / 2q is 5 times the true root. */
  @Test
  void aFarStartIsLedHomeByShorterSteps() {
    TiltFit even = TiltCase.evenFit(0);
    double[] flat = even.coefficients().clone();
    for (int j = 0; j < flat.length; j++) {
      flat[j] *= 0.1;
    }
    TiltFit fit = TiltSolver.fit(even.problem(), even.prior(), flat, TiltCase.DIAMETER_MM, 40);
    assertEquals(TiltCase.DIAMETER_MM, fit.diameterMm(), 1e-6);
    for (int i = 0; i < fit.problem().trace().size(); i++) {
      assertEquals(TiltCase.evenRock(fit.problem().trace().tS()[i]), fit.root(i), 1e-4);
    }
  }

  @Test
  void aSampleLeftOutHasNoPartInTheFit() {
    TiltFit with = TiltCase.evenFit(0.001);
    boolean[] used = with.problem().used().clone();
    used[33] = false;
    RockTrace trace = with.problem().trace();
    double[] wild = trace.yMm().clone();
    wild[33] += 100;
    TiltProblem problem =
        new TiltProblem(new RockTrace(trace.tS(), wild), with.problem().basis(), used);
    TiltFit one = TiltSolver.fit(with, problem, with.prior(), 20);
    TiltFit other = TiltSolver.fit(with, with.problem().withUsed(used), with.prior(), 20);
    assertEquals(other.diameterMm(), one.diameterMm(), 0);
    assertEquals(other.criterion(), one.criterion(), 0);
  }

  @Test
  void theRobustFitLetsGoOfGlitches() {
    RockTrace trace = TiltCase.trace(150, TiltCase::evenRock, 0.0005);
    double[] wild = trace.yMm().clone();
    for (int i = 5; i < 150; i += 19) {
      wild[i] += (i % 2 == 0 ? 1 : -1) * 0.2;
    }
    TiltFit clean = TiltCase.evenFit(0);
    TiltProblem problem =
        new TiltProblem(
            new RockTrace(trace.tS(), wild), clean.problem().basis(), clean.problem().used());
    TiltFit robust =
        TiltSolver.fitRobustly(
            problem, clean.prior(), clean.coefficients(), 0.15, 0.03, 0.01, 0.003, 0.003);
    assertEquals(TiltCase.DIAMETER_MM, robust.diameterMm(), 0.0003);
    assertTrue(robust.weight()[5] < 1e-3 && robust.weight()[6] > 0.5);
  }

  /** With a diameter of its own each half of a record that steps finds its own level. */
  @Test
  void splitFindsTheLevelOfEachStretch() {
    RockTrace trace = TiltCase.trace(150, TiltCase::evenRock, 0);
    double[] stepped = trace.yMm().clone();
    int[] stretch = new int[150];
    for (int i = 75; i < 150; i++) {
      stepped[i] += 1e-5;
      stretch[i] = 1;
    }
    TiltFit even = TiltCase.evenFit(0);
    TiltProblem problem =
        new TiltProblem(
            new RockTrace(trace.tS(), stepped), even.problem().basis(), even.problem().used());
    TiltPrior stiff = even.prior().withStiffness(100);
    TiltFit fit = TiltSolver.fit(problem, stiff, even.coefficients(), TiltCase.DIAMETER_MM, 20);
    TiltSolution split = TiltSolver.split(fit, stretch, 2);
    assertEquals(TiltCase.DIAMETER_MM, split.diameterMm()[0], 3e-7);
    assertEquals(TiltCase.DIAMETER_MM + 1e-5, split.diameterMm()[1], 3e-7);
  }
}
