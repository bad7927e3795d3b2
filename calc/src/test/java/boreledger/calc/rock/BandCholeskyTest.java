package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.util.Random;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Compared with the dense Cholesky decomposition of Apache Commons Math 3.6.1. */
class BandCholeskyTest {

  @ParameterizedTest
  @CsvSource({"1, 0", "2, 1", "7, 2", "40, 5", "6, 5", "9, 8"})
  void agreesWithTheDenseDecomposition(int size, int width) {
    Random random = new Random(31L * size + width);
    double[] band = new double[size * (width + 1)];
    RealMatrix dense = MatrixUtils.createRealMatrix(size, size);
    for (int i = 0; i < size; i++) {
      for (int d = 0; d <= Math.min(width, i); d++) {
        double value = d == 0 ? 2 * width + 1 + random.nextDouble() : random.nextDouble() - 0.5;
        band[i * (width + 1) + d] = value;
        dense.setEntry(i, i - d, value);
        dense.setEntry(i - d, i, value);
      }
    }
    double[] right = random.doubles(size, -1, 1).toArray();
    RealVector vector = new ArrayRealVector(right);
    CholeskyDecomposition oracle = new CholeskyDecomposition(dense);
    BandCholesky factor = BandCholesky.of(size, width, band);
    assertArrayEquals(oracle.getSolver().solve(vector).toArray(), factor.solve(right), 1e-12);
    assertEquals(Math.log(oracle.getDeterminant()), factor.logDeterminant(), 1e-10);
    assertArrayEquals(dense.operate(right), factor.times(right), 1e-12);
    assertEquals(vector.dotProduct(dense.operate(vector)), factor.quadraticForm(right), 1e-10);
    double[] half = right.clone();
    factor.forward(half, 0);
    double inverseForm = vector.dotProduct(oracle.getSolver().solve(vector));
    assertEquals(
        inverseForm,
        new ArrayRealVector(half).getNorm() * new ArrayRealVector(half).getNorm(),
        1e-10);
  }

  @ParameterizedTest
  @CsvSource({"1, 2, 1", "0, 0, 1", "-1, 0, 1", "1, 1, 1"})
  void aMatrixThatIsNotPositiveDefiniteGivesNull(double first, double side, double second) {
    assertNull(BandCholesky.of(2, 1, new double[] {first, 0, second, side}));
  }
}
