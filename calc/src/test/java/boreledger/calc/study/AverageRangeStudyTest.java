package boreledger.calc.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import boreledger.calc.reference.Seeds;
import java.util.List;
import org.junit.jupiter.api.Test;

class AverageRangeStudyTest {
  @Test
  void publishedStudyHasItsVariation() {
    // AIAG MSA 4th ed., III-B: printed 0.20188, 0.22963, 0.30575, 1.10456, 1.14610, 17.62, 20.04,
    // 26.68, 96.38 per cent, ndc 5.094 (from memory), with rounded averages; the longer figures
    // recomputed from the data without.
    AverageRangeStudy study = AverageRangeStudy.of(Studies.published());
    GaugeVariation found = study.variation();
    assertEquals(0.20188, found.ev(), 5e-5);
    assertEquals(0.22963, found.av(), 5e-5);
    assertEquals(0.30575, found.grr(), 5e-5);
    assertEquals(1.10456, found.pv(), 5e-5);
    assertEquals(1.14610, found.tv(), 5e-5);
    assertEquals(17.62, found.percentOfStudy(found.ev()).orElseThrow(), 0.01);
    assertEquals(20.04, found.percentOfStudy(found.av()).orElseThrow(), 0.01);
    assertEquals(26.68, found.percentGrr().orElseThrow(), 0.01);
    assertEquals(96.38, found.percentOfStudy(found.pv()).orElseThrow(), 0.01);
    assertEquals(5.094, found.ndc().orElseThrow(), 1e-3);
    assertEquals(5, found.categories().orElseThrow());
    assertNull(found.interaction());
    assertEquals(0.2018567, found.ev(), 5.1e-8);
    assertEquals(0.2296670, found.av(), 5.1e-8);
    assertEquals(0.3057663, found.grr(), 5.1e-8);
    assertEquals(1.1045956, found.pv(), 5.1e-8);
    assertEquals(1.1461345, found.tv(), 5.1e-8);
    assertEquals(26.6780, found.percentGrr().orElseThrow(), 5.1e-5);
    assertEquals(5.09369, found.ndc().orElseThrow(), 5.1e-6);
  }

  @Test
  void publishedStudyHasItsAveragesAndRanges() {
    AverageRangeStudy study = AverageRangeStudy.of(Studies.published());
    assertEquals(List.of("A", "B", "C"), study.appraisers().stream().map(a -> a.name()).toList());
    double[] means = {0.190333, 0.068333, -0.254333};
    double[] ranges = {0.184, 0.513, 0.328};
    for (int a = 0; a < 3; a++) {
      assertEquals(means[a], study.appraisers().get(a).mean(), 5e-7);
      assertEquals(ranges[a], study.appraisers().get(a).meanRange(), 1e-12);
    }
    assertEquals(0.3416667, study.meanRange(), 5e-8);
    assertEquals(0.4446667, study.appraiserDifference(), 5e-8);
    assertEquals(3.5111111, study.partRange(), 5e-8);
  }

  @Test
  void sixStandardDeviationsAreHeldAgainstTheTolerance() {
    // By hand: 6 x 0.30575 of a tolerance of 4 are 45.86 per cent.
    GaugeVariation found = AverageRangeStudy.of(Studies.published()).variation();
    assertEquals(45.86, found.percentOfTolerance(4), 0.01);
    assertEquals(100 * 6 * found.pv() / 4, found.percentOfTolerance(found.pv(), 4), 1e-12);
  }

  @Test
  void oneAppraiserHasNoAppraiserVariation() {
    double[][][] values = {{{96.012, 96.014}}, {{96.001, 96.004}}};
    GaugeVariation found = AverageRangeStudy.of(Studies.of(values)).variation();
    assertEquals(0, found.av());
    assertNull(found.interaction());
    // Mean range 0.0025 by K1 0.8862, part range 0.0105 by K3 0.7071.
    assertEquals(0.0025 * 0.8862, found.ev(), 1e-12);
    assertEquals(0.0105 * 0.7071, found.pv(), 1e-12);
  }

  @Test
  void appraisersCloserThanTheirRepeatabilityHaveNoVariation() {
    double[][][] values = {{{0, 1}, {0, 1.01}}, {{5, 6}, {5, 6.01}}};
    assertEquals(0, AverageRangeStudy.of(Studies.of(values)).variation().av());
  }

  @Test
  void manyPartsAreNoObstacle() {
    double[][][] values = new double[40][2][2];
    for (int p = 0; p < 40; p++) {
      values[p] = new double[][] {{p, p + 1}, {p, p + 1}};
    }
    // d2 and d3 of 40 from common tables, 4.322 and 0.667 (from memory).
    double pv = AverageRangeStudy.of(Studies.of(values)).variation().pv();
    assertEquals(39 / Math.hypot(4.322, 0.667), pv, 0.003);
  }

  @Test
  void methodsAgreeOnAverage() {
    // Both estimate the same standard deviations; over many studies their means meet.
    double[] sums = new double[4];
    Seeds.each(
        random -> {
          CrossedStudy study = Studies.random(random);
          GaugeVariation one = AnovaStudy.withoutPooling(study).variation();
          GaugeVariation two = AverageRangeStudy.of(study).variation();
          sums[0] += one.ev();
          sums[1] += two.ev();
          sums[2] += one.pv();
          sums[3] += two.pv();
        });
    assertEquals(sums[0], sums[1], 0.03 * sums[0]);
    assertEquals(sums[2], sums[3], 0.10 * sums[2]);
  }

  @Test
  void shiftingChangesNothingAndScalingScales() {
    Seeds.each(
        random -> {
          CrossedStudy study = Studies.random(random);
          double shift = Seeds.between(random, -500, 500);
          double scale = Seeds.between(random, -500, 500);
          GaugeVariation one = AverageRangeStudy.of(study).variation();
          GaugeVariation other =
              AverageRangeStudy.of(Studies.changed(study, value -> scale * (value + shift)))
                  .variation();
          double tolerance = 1e-8 * Math.abs(scale) * one.tv();
          assertEquals(Math.abs(scale) * one.ev(), other.ev(), tolerance);
          assertEquals(Math.abs(scale) * one.pv(), other.pv(), tolerance);
          assertEquals(
              scale * scale * one.av() * one.av(),
              other.av() * other.av(),
              tolerance * one.tv() * Math.abs(scale));
        });
  }
}
