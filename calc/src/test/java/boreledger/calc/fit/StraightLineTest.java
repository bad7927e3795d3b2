package boreledger.calc.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.ReferenceTable;
import boreledger.calc.reference.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

class StraightLineTest {
  /** Pairs of a NIST StRD file: two columns, y then x, from line 61. */
  private static double[][] pairs(String file) {
    List<double[]> rows = new ArrayList<>();
    for (String line : ReferenceTable.lines(file).subList(60, ReferenceTable.lines(file).size())) {
      if (!line.isBlank()) {
        String[] cells = line.trim().split("\\s+");
        rows.add(new double[] {Double.parseDouble(cells[1]), Double.parseDouble(cells[0])});
      }
    }
    double[][] xy = new double[2][rows.size()];
    for (int i = 0; i < rows.size(); i++) {
      xy[0][i] = rows.get(i)[0];
      xy[1][i] = rows.get(i)[1];
    }
    return xy;
  }

  /** Digits that agree, relative. */
  private static void assertDigits(double certified, double found, double digits) {
    assertEquals(certified, found, Math.abs(certified) * Math.pow(10, -digits));
  }

  @Test
  void norrisHasItsCertifiedLine() {
    // NIST StRD, Norris: certified values.
    double[][] xy = pairs("Norris.dat");
    assertEquals(36, xy[0].length);
    StraightLine line = StraightLine.through(xy[0], xy[1]);
    assertDigits(-0.262323073774029, line.at(0), 12);
    assertDigits(1.00211681802045, line.slope(), 14);
    assertDigits(0.232818234301152, line.standardUncertaintyAt(0).orElseThrow(), 13);
    assertDigits(0.429796848199937E-03, line.slopeStandardUncertainty().orElseThrow(), 13);
    assertDigits(0.884796396144373, line.residualStandardDeviation().orElseThrow(), 13);
    assertEquals(34, line.degreesOfFreedom());
  }

  /**
   * A line through the origin is the free line through the pairs and their mirror images, which has
   * the same residual standard deviation and a slope known better by root 2.
   */
  private static StraightLine mirrored(double[][] xy) {
    int n = xy[0].length;
    double[] x = new double[2 * n];
    double[] y = new double[2 * n];
    for (int i = 0; i < n; i++) {
      x[i] = xy[0][i];
      y[i] = xy[1][i];
      x[n + i] = -x[i];
      y[n + i] = -y[i];
    }
    return StraightLine.through(x, y);
  }

  @Test
  void linesThroughTheOriginHaveTheirCertifiedSlope() {
    // NIST StRD, NoInt1 and NoInt2: certified values.
    StraightLine one = mirrored(pairs("NoInt1.dat"));
    assertDigits(2.07438016528926, one.slope(), 14);
    assertDigits(3.56753034006338, one.residualStandardDeviation().orElseThrow(), 13);
    double u1 = Math.sqrt(2) * one.slopeStandardUncertainty().orElseThrow();
    assertDigits(0.165289256198347E-01, u1, 13);
    StraightLine two = mirrored(pairs("NoInt2.dat"));
    assertDigits(0.727272727272727, two.slope(), 14);
    double u2 = Math.sqrt(2) * two.slopeStandardUncertainty().orElseThrow();
    assertDigits(0.420827318078432E-01, u2, 13);
  }

  @Test
  void thermometerOfGumH3HasItsLine() {
    // JCGM 100:2008, H.3: printed -0.1712 (0.0029), 0.00218 (0.00067), s 0.0035, at 30 degrees
    // -0.1494 (0.0041); the longer figures recomputed with the same data.
    List<double[]> rows = new ArrayList<>();
    ReferenceTable.rows("gum_h3_thermometer.csv")
        .forEach(
            row ->
                rows.add(
                    new double[] {
                      Double.parseDouble(row.get("t_degC")) - 20,
                      Double.parseDouble(row.get("b_degC"))
                    }));
    double[] x = rows.stream().mapToDouble(row -> row[0]).toArray();
    double[] y = rows.stream().mapToDouble(row -> row[1]).toArray();
    StraightLine line = StraightLine.through(x, y);
    assertEquals(11, line.pairs());
    assertDigits(-0.17120379013135, line.at(0), 12);
    assertDigits(0.00287759783516, line.standardUncertaintyAt(0).orElseThrow(), 11);
    assertDigits(0.00218269773989, line.slope(), 11);
    assertDigits(0.00066793877323, line.slopeStandardUncertainty().orElseThrow(), 11);
    assertDigits(0.00349756396351, line.residualStandardDeviation().orElseThrow(), 11);
    assertDigits(0.000110096583, line.residualSquares(), 8);
    assertDigits(-0.149376812732, line.at(10), 11);
    assertDigits(0.004138595753, line.standardUncertaintyAt(10).orElseThrow(), 9);
  }

  @Test
  void agreesWithAnotherLibrary() {
    Seeds.each(
        random -> {
          int n = 3 + random.nextInt(20);
          double[] x = new double[n];
          double[] y = new double[n];
          SimpleRegression other = new SimpleRegression();
          for (int i = 0; i < n; i++) {
            x[i] = Seeds.between(random, 0, 150);
            y[i] = 96 + 1e-4 * x[i] + 1e-3 * random.nextGaussian();
            other.addData(x[i], y[i]);
          }
          StraightLine line = StraightLine.through(x, y);
          double scale = other.getSlopeStdErr();
          assertEquals(other.getSlope(), line.slope(), 1e-8 * scale);
          assertEquals(scale, line.slopeStandardUncertainty().orElseThrow(), 1e-6 * scale);
          assertEquals(
              other.getInterceptStdErr(),
              line.standardUncertaintyAt(0).orElseThrow(),
              1e-6 * other.getInterceptStdErr());
        });
  }

  @Test
  void keepsItsDigitsFarFromZero() {
    // Whole numbers: slope 2 exactly, and residuals of 1, -2, 1 whose squares sum to 6.
    double far = 1e9;
    StraightLine line =
        StraightLine.through(
            new double[] {far, far + 1, far + 2}, new double[] {far + 1, far, far + 5});
    assertEquals(2, line.slope(), 1e-12);
    assertEquals(6, line.residualSquares(), 1e-12);
    assertEquals(2, line.squaresX(), 1e-12);
    assertEquals(far + 1, line.meanX());
    assertEquals(far + 2, line.meanY());
  }

  @Test
  void twoPointsHaveALineAndNoScatter() {
    StraightLine line = StraightLine.through(new double[] {10, 50}, new double[] {96.02, 96.00});
    assertEquals(-0.0005, line.slope(), 1e-15);
    assertEquals(96.025, line.at(0), 1e-12);
    assertEquals(OptionalDouble.empty(), line.residualStandardDeviation());
    assertEquals(OptionalDouble.empty(), line.slopeStandardUncertainty());
    assertEquals(OptionalDouble.empty(), line.standardUncertaintyAt(3));
  }

  @Test
  void pointsThatGiveNoLineAreRefused() {
    assertEquals(
        "1 points of a line given, at least 2 needed", refusal(new double[] {1}, new double[] {1}));
    assertEquals("2 x and 1 y given for a line", refusal(new double[] {1, 2}, new double[] {1}));
    assertEquals(
        "all points of a line are at x 3.0", refusal(new double[] {3, 3}, new double[] {1, 2}));
    assertEquals(
        "coordinate of a point NaN is not a finite number",
        refusal(new double[] {3, 4}, new double[] {1, Double.NaN}));
  }

  private static String refusal(double[] x, double[] y) {
    return assertThrows(ImpossibleInput.class, () -> StraightLine.through(x, y)).getMessage();
  }
}
