package boreledger.calc.filing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.ReferenceTable;
import boreledger.calc.reference.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

class RemovalRateTest {
  @Test
  void certifiedLineThroughTheOriginComesOut() {
    // NIST StRD NoInt1, certified slope 2.07438016528926. Readings that are not shared and far
    // coarser than all else weigh every pass alike, as that fit does.
    List<FilingPass> passes = new ArrayList<>();
    for (String line : ReferenceTable.lines("NoInt1.dat").subList(60, 71)) {
      String[] yx = line.trim().split("\\s+");
      passes.add(new FilingPass(Integer.parseInt(yx[1]), 0, Double.parseDouble(yx[0])));
    }
    assertEquals(11, passes.size());
    RemovalRate rate = RemovalRate.of(passes, 1e6);
    assertEquals(2.07438016528926, rate.perTurnMm(), 1e-11);
    // Its standard uncertainty for known variance: root of 2 u^2 / sum of squares of the turns.
    double squares = passes.stream().mapToDouble(pass -> pass.turns() * pass.turns()).sum();
    assertEquals(Math.sqrt(2e12 / squares), rate.standardUncertaintyMm(), 1e-6);
  }

  @Test
  void fineReadingsGiveMeanAndStandardDeviationOfTheRates() {
    // Removals 0.02, 0.03, 0.01 in 4, 5, 2 turns: 0.005, 0.006, 0.005 per turn.
    RemovalRate rate = RemovalRate.of(passes(0.3, 4, 0.02, 5, 0.03, 2, 0.01), 1e-9);
    double[] rates = {0.005, 0.006, 0.005};
    assertEquals(StatUtils.mean(rates), rate.perTurnMm(), 1e-12);
    double spread = Math.sqrt(StatUtils.variance(rates));
    assertEquals(spread, rate.passToPassMm(), 1e-12);
    assertEquals(spread / Math.sqrt(3), rate.standardUncertaintyMm(), 1e-12);
    assertEquals(2, rate.degreesOfFreedom());
  }

  /** Passes in a row: turns, removal, turns, removal and so on. */
  static List<FilingPass> passes(double startMm, double... turnsAndRemovals) {
    List<FilingPass> passes = new ArrayList<>();
    double gapMm = startMm;
    for (int i = 0; i < turnsAndRemovals.length; i += 2) {
      double afterMm = gapMm + turnsAndRemovals[i + 1];
      passes.add(new FilingPass((int) turnsAndRemovals[i], gapMm, afterMm));
      gapMm = afterMm;
    }
    return passes;
  }

  @Test
  void fitIsThatOfTheWholeMatrixInverted() {
    // Generalised least squares with the dense matrices of Commons Math 3.6.1.
    Seeds.each(RemovalRateTest::checkAgainstDense);
  }

  private static void checkAgainstDense(Random random) {
    double u = Seeds.between(random, 0.001, 0.01);
    List<FilingPass> passes = new ArrayList<>();
    double gapMm = 0.3;
    for (int i = 0; i < 2 + random.nextInt(8); i++) {
      double beforeMm = random.nextInt(4) == 0 ? gapMm + u * random.nextGaussian() : gapMm;
      gapMm = beforeMm + Seeds.between(random, 0.001, 0.05);
      passes.add(new FilingPass(1 + random.nextInt(20), beforeMm, gapMm));
    }
    RemovalRate rate = RemovalRate.of(passes, u);
    RealMatrix inverse = MatrixUtils.inverse(covariance(passes, u, rate.passToPassMm()));
    RealVector turns = vector(passes.stream().mapToDouble(FilingPass::turns).toArray());
    RealVector removed = vector(passes.stream().mapToDouble(FilingPass::removedMm).toArray());
    RealVector weights = inverse.operate(turns);
    double variance = 1 / weights.dotProduct(turns);
    assertEquals(variance * weights.dotProduct(removed), rate.perTurnMm(), 1e-12);
    assertEquals(Math.sqrt(variance), rate.standardUncertaintyMm(), 1e-12);
    assertEquals(variance * weights.getEntry(passes.size() - 1), rate.lastReadingShare(), 1e-9);
  }

  private static RealMatrix covariance(List<FilingPass> passes, double u, double s) {
    RealMatrix covariance = MatrixUtils.createRealMatrix(passes.size(), passes.size());
    for (int i = 0; i < passes.size(); i++) {
      covariance.setEntry(i, i, 2 * u * u + Math.pow(s * passes.get(i).turns(), 2));
      if (i > 0 && passes.get(i).beforeMm() == passes.get(i - 1).afterMm()) {
        covariance.setEntry(i, i - 1, -u * u);
        covariance.setEntry(i - 1, i, -u * u);
      }
    }
    return covariance;
  }

  private static RealVector vector(double[] values) {
    return MatrixUtils.createRealVector(values);
  }

  @Test
  void coarseSharedReadingsGiveTheLineThroughTheReadings() {
    // With errors in the readings alone, removals between shared readings carry the same knowledge
    // as the readings: the slope is that of the least-squares line of gap over turns so far
    // (Commons Math 3.6.1).
    List<FilingPass> passes = passes(0.3, 4, 0.25, 7, 0.31, 2, 0.12, 5, 0.3);
    SimpleRegression line = new SimpleRegression();
    line.addData(0, 0.3);
    int turns = 0;
    for (FilingPass pass : passes) {
      turns += pass.turns();
      line.addData(turns, pass.afterMm());
    }
    RemovalRate rate = RemovalRate.of(passes, 1e4);
    assertEquals(line.getSlope(), rate.perTurnMm(), 1e-9);
    assertEquals(1e4 / Math.sqrt(line.getXSumSquares()), rate.standardUncertaintyMm(), 1e-6);
  }

  @Test
  void fewerThanTwoPassesAreRefused() {
    assertEquals(
        "1 filing passes given, at least 2 needed",
        assertThrows(
                ImpossibleInput.class,
                () -> RemovalRate.of(List.of(new FilingPass(1, 0.3, 0.31)), 0.01))
            .getMessage());
  }
}
