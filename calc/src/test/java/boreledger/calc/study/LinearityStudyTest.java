package boreledger.calc.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.ReferenceTable;
import boreledger.calc.reference.Seeds;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

class LinearityStudyTest {
  private static LinearityStudy published() {
    List<ReferenceReading> readings = new ArrayList<>();
    ReferenceTable.rows("linearity_5x12.csv")
        .forEach(
            row -> {
              for (int i = 1; i <= 12; i++) {
                readings.add(
                    new ReferenceReading(
                        Double.parseDouble(row.get("reference")),
                        Double.parseDouble(row.get("r" + i))));
              }
            });
    return LinearityStudy.of(readings);
  }

  @Test
  void publishedStudyHasItsLine() {
    // AIAG MSA 4th ed., III-B, linearity: slope -0.131667, intercept 0.736667, s 0.23954, t 12.043
    // and 10.158 (from memory).
    LinearityStudy study = published();
    assertEquals(60, study.line().pairs());
    assertEquals(-0.131667, study.slope().estimate(), 5e-7);
    assertEquals(0.736667, study.intercept().estimate(), 5e-7);
    assertEquals(0.23954, study.line().residualStandardDeviation().orElseThrow(), 5e-6);
    assertEquals(-12.043, study.slopeTest().orElseThrow().t(), 5e-4);
    assertEquals(10.158, study.interceptTest().orElseThrow().t(), 5e-4);
    assertEquals(58, study.slopeTest().orElseThrow().degreesOfFreedom());
    assertFalse(study.slope().containsZero());
    assertFalse(study.zeroInBandThroughout());
  }

  @Test
  void publishedStudyHasItsBiases() {
    // The same example's bias averages (from memory).
    double[] printed = {0.491667, 0.125, 0.025, -0.29167, -0.61667};
    List<Bias> biases = published().biases();
    assertEquals(5, biases.size());
    for (int i = 0; i < 5; i++) {
      assertEquals(2.0 * (i + 1), biases.get(i).reference());
      assertEquals(printed[i], biases.get(i).amount(), 5e-6);
    }
  }

  @Test
  void thermometerOfGumH3HasItsBand() {
    // JCGM 100:2008, H.3: at 30 degrees -0.1494 with u 0.0041 and 9 degrees of freedom; t 2.262
    // (Table G.2). Longer figures recomputed with the same data.
    List<ReferenceReading> readings = new ArrayList<>();
    ReferenceTable.rows("gum_h3_thermometer.csv")
        .forEach(
            row -> {
              double t = Double.parseDouble(row.get("t_degC")) - 20;
              readings.add(new ReferenceReading(t, t + Double.parseDouble(row.get("b_degC"))));
            });
    Interval band = LinearityStudy.of(readings).band(10);
    assertEquals(-0.149376812732, band.estimate(), 1e-12);
    assertEquals(2.262157 * 0.004138595753, band.halfWidth(), 1e-8);
    assertEquals(band.estimate() - band.halfWidth(), band.low());
    assertEquals(band.estimate() + band.halfWidth(), band.high());
  }

  @Test
  void agreesWithAnotherLibrary() {
    Seeds.each(
        random -> {
          List<ReferenceReading> readings = random(random);
          SimpleRegression other = new SimpleRegression();
          readings.forEach(reading -> other.addData(reading.reference(), reading.deviation()));
          LinearityStudy study = LinearityStudy.of(readings);
          double scale = other.getSlopeStdErr();
          assertEquals(other.getSlope(), study.slope().estimate(), 1e-7 * scale);
          assertEquals(other.getSlopeConfidenceInterval(), study.slope().halfWidth(), 1e-6 * scale);
          assertEquals(other.getSignificance(), study.slopeTest().orElseThrow().p(), 1e-7);
          double t = other.getIntercept() / other.getInterceptStdErr();
          assertEquals(t, study.interceptTest().orElseThrow().t(), 1e-6 * Math.max(1, Math.abs(t)));
          for (Bias bias : study.biases()) {
            assertBias(readings, bias);
          }
        });
  }

  private static void assertBias(List<ReferenceReading> readings, Bias bias) {
    double[] deviations =
        readings.stream()
            .filter(reading -> reading.reference() == bias.reference())
            .mapToDouble(ReferenceReading::deviation)
            .toArray();
    TTest test = bias.test().orElseThrow();
    var other = new org.apache.commons.math3.stat.inference.TTest();
    double t = other.t(0, deviations);
    assertEquals(t, test.t(), 1e-7 * Math.max(1, Math.abs(t)));
    assertEquals(other.tTest(0, deviations), test.p(), 1e-8);
    // An interval without zero is a p below 0.05.
    assertEquals(test.p() >= 0.05, bias.interval().orElseThrow().containsZero());
  }

  private static List<ReferenceReading> random(Random random) {
    List<ReferenceReading> readings = new ArrayList<>();
    double bias = 0.001 * random.nextGaussian();
    double slope = 1e-5 * random.nextGaussian();
    for (double reference : new double[] {80, 96, 110}) {
      for (int i = 2 + random.nextInt(8); i > 0; i--) {
        double off = bias + slope * (reference - 90) + 0.001 * random.nextGaussian();
        readings.add(new ReferenceReading(reference, reference + off));
      }
    }
    return readings;
  }

  @Test
  void zeroIsInTheBandThroughoutWhenItIsAtEveryStep() {
    int[] seen = new int[2];
    Seeds.each(
        random -> {
          LinearityStudy study = LinearityStudy.of(random(random));
          boolean everywhere = true;
          for (int i = 0; i <= 300; i++) {
            everywhere &= study.band(80 + i * 0.1).containsZero();
          }
          assertEquals(everywhere, study.zeroInBandThroughout());
          seen[everywhere ? 1 : 0]++;
        });
    assertTrue(seen[0] > 50 && seen[1] > 50, seen[0] + " and " + seen[1]);
  }

  @Test
  void aBiasOnlyInTheMiddleIsNotMissed() {
    // By hand: 0.9 and 0.2 at each of three references give a level line at 0.55 with s 0.429;
    // times
    // t 2.776 the band is 0.486 wide at the middle and 0.768 at the ends.
    List<ReferenceReading> readings = new ArrayList<>();
    for (double off : new double[] {0.9, 0.2}) {
      readings.add(new ReferenceReading(-5, -5 + off));
      readings.add(new ReferenceReading(0, off));
      readings.add(new ReferenceReading(5, 5 + off));
    }
    LinearityStudy study = LinearityStudy.of(readings);
    assertTrue(study.band(-5).containsZero());
    assertTrue(study.band(5).containsZero());
    assertFalse(study.band(0).containsZero());
    assertFalse(study.zeroInBandThroughout());
  }

  @Test
  void readingsOnTheLineHaveABandOfNoWidthAndNoTest() {
    LinearityStudy study =
        LinearityStudy.of(
            List.of(
                new ReferenceReading(1, 1),
                new ReferenceReading(2, 2),
                new ReferenceReading(3, 3)));
    assertEquals(0, study.band(2).halfWidth());
    assertTrue(study.slopeTest().isEmpty());
    assertTrue(study.zeroInBandThroughout());
    assertTrue(study.biases().get(0).interval().isEmpty());
    assertTrue(study.biases().get(0).test().isEmpty());
  }

  @Test
  void agreeingReadingsOfOneReferenceHaveNoTest() {
    Bias bias = new Bias(96, Sample.of(0.01, 0.01));
    assertTrue(bias.test().isEmpty());
    assertFalse(bias.interval().orElseThrow().containsZero());
  }

  @Test
  void readingsThatGiveNoLineAreRefused() {
    ReferenceReading one = new ReferenceReading(96, 96.01);
    assertEquals(
        "2 readings of references given, at least 3 needed",
        assertThrows(ImpossibleInput.class, () -> LinearityStudy.of(List.of(one, one)))
            .getMessage());
    assertEquals(
        "1 different references given, at least 2 needed",
        assertThrows(ImpossibleInput.class, () -> LinearityStudy.of(List.of(one, one, one)))
            .getMessage());
    ReferenceReading zero = new ReferenceReading(0, 0.01);
    ReferenceReading minusZero = new ReferenceReading(-0.0, 0.02);
    assertEquals(
        "1 different references given, at least 2 needed",
        assertThrows(ImpossibleInput.class, () -> LinearityStudy.of(List.of(zero, minusZero, zero)))
            .getMessage());
    assertEquals(
        "reading of reference 96.0 NaN is not a finite number",
        assertThrows(ImpossibleInput.class, () -> new ReferenceReading(96, Double.NaN))
            .getMessage());
  }
}
