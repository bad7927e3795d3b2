package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Compared with the dense normal equations solved by Apache Commons Math 3.6.1. */
class TiltEquationsTest {
  private static final int SAMPLES = 60;
  private static final int DIAMETERS = 3;

  private final TiltPrior prior = new TiltPrior(0.3, 3, 0);
  private SplineBasis basis;
  private TiltSolution solution;
  private RealMatrix normal;
  private RealVector dense;
  private double[] row20;

  @BeforeEach
  void solveBothWays() {
    Random random = new Random(4);
    double[] tS = new double[SAMPLES];
    for (int i = 1; i < SAMPLES; i++) {
      tS[i] = tS[i - 1] + 0.02 + 0.03 * random.nextDouble();
    }
    basis = new SplineBasis(tS, 0.11);
    int size = basis.size();
    TiltEquations equations = new TiltEquations(basis, DIAMETERS);
    normal = MatrixUtils.createRealMatrix(size + DIAMETERS, size + DIAMETERS);
    RealVector right = new ArrayRealVector(size + DIAMETERS);
    for (int i = 0; i < SAMPLES; i++) {
      double weight = 0.5 + random.nextDouble();
      double factor = random.nextGaussian();
      double target = random.nextGaussian();
      int k = i * DIAMETERS / SAMPLES;
      equations.add(i, weight, factor, k, target);
      double[] row = new double[size + DIAMETERS];
      for (int j = 0; j < SplineBasis.SUPPORT; j++) {
        row[basis.start(i) + j] = factor * basis.values(i)[j];
      }
      row[size + k] = 1;
      RealVector vector = new ArrayRealVector(row);
      normal = normal.add(vector.outerProduct(vector).scalarMultiply(weight));
      right = right.add(vector.mapMultiply(weight * target));
      row20 = i == 20 ? row : row20;
    }
    equations.addPenalty(prior);
    for (int i = 0; i + 5 <= size; i++) {
      double[] row = new double[size + DIAMETERS];
      System.arraycopy(prior.taps(basis.spacingS()), 0, row, i, 5);
      RealVector vector = new ArrayRealVector(row);
      normal = normal.add(vector.outerProduct(vector).scalarMultiply(prior.stiffness()));
    }
    dense = new LUDecomposition(normal).getSolver().solve(right);
    solution = equations.solve();
  }

  @Test
  void coefficientsAndDiametersAgree() {
    int size = basis.size();
    assertArrayEquals(dense.getSubVector(0, size).toArray(), solution.coefficients(), 1e-6);
    assertArrayEquals(dense.getSubVector(size, DIAMETERS).toArray(), solution.diameterMm(), 1e-6);
  }

  @Test
  void variancesAreThoseOfTheInverse() {
    RealMatrix inverse = new LUDecomposition(normal).getSolver().getInverse();
    for (int k = 0; k < DIAMETERS; k++) {
      int at = basis.size() + k;
      assertEquals(inverse.getEntry(at, at), solution.diameterVariance(k), 1e-6);
    }
  }

  @Test
  void determinantAgrees() {
    double expected = Math.log(new LUDecomposition(normal).getDeterminant());
    assertEquals(expected, solution.logDeterminant(), 1e-5);
  }

  /** Equal diameters force the common value: what each adds to it is its row of information. */
  @Test
  void weightsAddUpToOne() {
    double sum = 0;
    for (double weight : solution.diameterWeights()) {
      sum += weight;
    }
    assertEquals(1, sum, 1e-12);
  }
}
