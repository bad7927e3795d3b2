package boreledger.calc.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.reference.Seeds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.stat.inference.OneWayAnova;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AnovaStudyTest {
  @Test
  void publishedStudyHasItsPooledVariation() {
    // AIAG MSA 4th ed., Tables III-B 7 to 9: printed 0.199933, 0.226838, 0.302373, 1.042327, 1.085,
    // 18.4, 20.9, 27.9, 96.0 per cent, ndc 4.861 (printed figures from memory; recomputed with the
    // same data).
    AnovaStudy study = AnovaStudy.of(Studies.published());
    GaugeVariation found = study.variation();
    assertTrue(study.pooled());
    assertEquals(0.1999332, found.ev(), 5e-7);
    assertEquals(0.2268375, found.av(), 5e-7);
    assertEquals(0, found.interaction());
    assertEquals(0.3023715, found.grr(), 5e-7);
    assertEquals(1.0423275, found.pv(), 5e-7);
    assertEquals(1.0852996, found.tv(), 5e-7);
    assertEquals(18.4219, found.percentOfStudy(found.ev()).orElseThrow(), 5e-5);
    assertEquals(20.9009, found.percentOfStudy(found.av()).orElseThrow(), 5e-5);
    assertEquals(27.8607, found.percentGrr().orElseThrow(), 5e-5);
    assertEquals(96.0405, found.percentOfStudy(found.pv()).orElseThrow(), 5e-5);
    assertEquals(4.8605, found.ndc().orElseThrow(), 5e-5);
    assertEquals(4, found.categories().orElseThrow());
  }

  @Test
  void publishedStudyHasItsVariationWithoutPooling() {
    // The same study; recomputed, negative interaction variance set to 0.
    AnovaStudy study = AnovaStudy.withoutPooling(Studies.published());
    GaugeVariation found = study.variation();
    assertFalse(study.pooled());
    assertEquals(0.2144347, found.ev(), 5e-7);
    assertEquals(0.2283044, found.av(), 5e-7);
    assertEquals(0, found.interaction());
    assertEquals(0.3132174, found.grr(), 5e-7);
    assertEquals(1.0433945, found.pv(), 5e-7);
    assertEquals(1.0893931, found.tv(), 5e-7);
    assertEquals(28.7516, found.percentGrr().orElseThrow(), 5e-5);
    assertEquals(4.6970, found.ndc().orElseThrow(), 5e-5);
  }

  @Test
  void publishedStudyHasItsTable() {
    AnovaStudy study = AnovaStudy.of(Studies.published());
    AnovaTable table = study.table();
    assertSource(2, 3.167262, table.appraiser());
    assertSource(9, 88.361934, table.part());
    assertSource(18, 0.358982, table.interaction());
    assertSource(60, 2.758933, table.equipment());
    assertSource(89, 94.647112, table.total());
    assertEquals(0.43372, table.interactionTest().orElseThrow().f(), 5e-6);
    assertEquals(0.9741, table.interactionTest().orElseThrow().p(), 5e-5);
    assertEquals(79.406, table.appraiserTest().orElseThrow().f(), 5e-4);
    assertEquals(492.291, table.partTest().orElseThrow().f(), 5e-4);
    AnovaTable used = study.tableUsed();
    assertNull(used.interaction());
    assertSource(78, 3.117916, used.equipment());
    assertEquals(39.617, used.appraiserTest().orElseThrow().f(), 5e-4);
    assertEquals(245.614, used.partTest().orElseThrow().f(), 5e-4);
    // As printed, against the equipment's mean square: 34.44 and 213.52.
    assertEquals(34.44, FTest.of(table.appraiser(), table.equipment()).orElseThrow().f(), 0.005);
    assertEquals(213.52, FTest.of(table.part(), table.equipment()).orElseThrow().f(), 0.005);
  }

  private static void assertSource(int degreesOfFreedom, double squares, SumOfSquares found) {
    assertEquals(degreesOfFreedom, found.degreesOfFreedom());
    assertEquals(squares, found.amount(), 5.1e-7);
  }

  @Test
  void anInteractionThatStandsOutIsKept() {
    // By hand: cell means 0, 2, 2, 0 and every cell's readings 0.1 either side of its mean give
    // squares of 0 for parts and appraisers, 8 for the interaction (1), 0.08 for equipment (4).
    double[][][] values = {{{-0.1, 0.1}, {1.9, 2.1}}, {{1.9, 2.1}, {-0.1, 0.1}}};
    AnovaStudy study = AnovaStudy.of(Studies.of(values));
    assertFalse(study.pooled());
    assertEquals(8, study.table().interaction().amount(), 1e-12);
    assertEquals(0.08, study.table().equipment().amount(), 1e-12);
    GaugeVariation found = study.variation();
    assertEquals(Math.sqrt(0.02), found.ev(), 1e-12);
    assertEquals(Math.sqrt((8 - 0.02) / 2), found.interaction(), 1e-12);
    assertEquals(0, found.av());
    assertEquals(0, found.pv());
    assertEquals(Math.sqrt(0.02 + 3.99), found.grr(), 1e-12);
    assertEquals(0, found.ndc().orElseThrow());
    assertEquals(1, found.categories().orElseThrow());
  }

  @Test
  void theInteractionIsPooledJustAboveAQuarter() {
    // With 1 and 4 degrees of freedom p = 0.25 at F = 1.8074 (oracle: Hipparchus).
    double quarter =
        new org.hipparchus.distribution.continuous.FDistribution(1, 4)
            .inverseCumulativeProbability(0.75);
    for (double side : new double[] {-1e-6, 1e-6}) {
      // Interaction squares 2 d^2, equipment mean square 0.02.
      double d = Math.sqrt(0.02 * quarter * (1 + side) / 2);
      double[][][] values = {{{-0.1, 0.1}, {d - 0.1, d + 0.1}}, {{d - 0.1, d + 0.1}, {-0.1, 0.1}}};
      assertEquals(side < 0, AnovaStudy.of(Studies.of(values)).pooled(), "side " + side);
    }
  }

  @Test
  void oneAppraiserIsTheOneWayAnalysisOfTheParts() {
    double[][][] values = {{{96.012, 96.014, 96.013}}, {{96.001, 96.004, 96.002}}};
    AnovaStudy study = AnovaStudy.of(Studies.of(values));
    assertNull(study.table().appraiser());
    assertNull(study.table().interaction());
    assertTrue(study.table().appraiserTest().isEmpty());
    assertTrue(study.table().interactionTest().isEmpty());
    assertEquals(0, study.variation().av());
    assertNull(study.variation().interaction());
    assertFalse(study.pooled());
    OneWayAnova other = new OneWayAnova();
    List<double[]> groups =
        List.of(new double[] {0.012, 0.014, 0.013}, new double[] {0.001, 0.004, 0.002});
    FTest test = study.table().partTest().orElseThrow();
    assertEquals(other.anovaFValue(groups), test.f(), 1e-9 * test.f());
    assertEquals(other.anovaPValue(groups), test.p(), 1e-9 * test.p());
  }

  @Test
  void readingsThatRepeatExactlyLeaveNoGaugeVariationAndNoCategories() {
    double[][][] values = {
      {{96.02, 96.02, 96.02}, {96.02, 96.02, 96.02}},
      {{96.05, 96.05, 96.05}, {96.05, 96.05, 96.05}},
      {{96.11, 96.11, 96.11}, {96.11, 96.11, 96.11}}
    };
    GaugeVariation found = AnovaStudy.of(Studies.of(values)).variation();
    assertEquals(0, found.grr());
    assertEquals(0, found.percentGrr().orElseThrow());
    assertTrue(found.ndc().isEmpty());
    assertTrue(found.categories().isEmpty());
    assertEquals(
        Sample.of(96.02, 96.05, 96.11).standardDeviation().orElseThrow(), found.pv(), 1e-9);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 1e3, 1e6, 1 / 25.4})
  void partsAndAppraisersThatOnlyAddHaveNoInteractionInAnyUnit(double scale) {
    double[] part = {0.02, 0.05, 0.11, 0.13, 0.17};
    double[] appraiser = {0, 0.003, 0.007};
    double[][][] values = new double[part.length][appraiser.length][2];
    for (int p = 0; p < part.length; p++) {
      for (int a = 0; a < appraiser.length; a++) {
        Arrays.fill(values[p][a], (part[p] + appraiser[a]) * scale);
      }
    }
    AnovaTable table = AnovaTable.of(Studies.of(values));
    assertEquals(0, table.interaction().amount());
    assertEquals(0, table.equipment().amount());
    assertTrue(table.appraiser().amount() > 0);
  }

  @Test
  void equalReadingsVaryNowhere() {
    double[][][] values = {{{96.1, 96.1}, {96.1, 96.1}}, {{96.1, 96.1}, {96.1, 96.1}}};
    GaugeVariation found = AnovaStudy.of(Studies.of(values)).variation();
    assertEquals(0, found.tv());
    assertTrue(found.percentGrr().isEmpty());
    assertTrue(found.ndc().isEmpty());
  }

  @Test
  void squaresAddUpAndAgreeWithAnotherLibrary() {
    Seeds.each(
        random -> {
          CrossedStudy study = Studies.random(random);
          AnovaTable table = AnovaTable.of(study);
          double sum = table.part().amount() + table.equipment().amount();
          int freedom = table.part().degreesOfFreedom() + table.equipment().degreesOfFreedom();
          if (study.appraisers().size() > 1) {
            sum += table.appraiser().amount() + table.interaction().amount();
            freedom +=
                table.appraiser().degreesOfFreedom() + table.interaction().degreesOfFreedom();
          }
          double total = table.total().amount();
          assertEquals(total, sum, 1e-10 * total);
          assertEquals(table.total().degreesOfFreedom(), freedom);
          List<double[]> byPart = byPart(study);
          double f = new OneWayAnova().anovaFValue(byPart);
          SumOfSquares rest =
              new SumOfSquares(
                  total - table.part().amount(),
                  table.total().degreesOfFreedom() - table.part().degreesOfFreedom());
          assertEquals(f, FTest.of(table.part(), rest).orElseThrow().f(), 1e-5 * f);
        });
  }

  private static List<double[]> byPart(CrossedStudy study) {
    List<double[]> groups = new ArrayList<>();
    for (String part : study.parts()) {
      groups.add(
          study.readings().stream()
              .filter(reading -> reading.part().equals(part))
              .mapToDouble(reading -> reading.value() - 96)
              .toArray());
    }
    return groups;
  }

  @Test
  void shiftingAllValuesChangesNothing() {
    Seeds.each(
        random -> {
          CrossedStudy study = Studies.random(random);
          double by = Seeds.between(random, -500, 500);
          assertVariation(
              1,
              AnovaStudy.of(study).variation(),
              AnovaStudy.of(Studies.changed(study, value -> value + by)).variation());
        });
  }

  @Test
  void scalingAllValuesScales() {
    Seeds.each(
        random -> {
          CrossedStudy study = Studies.random(random);
          double by = Seeds.between(random, -500, 500);
          assertVariation(
              Math.abs(by),
              AnovaStudy.of(study).variation(),
              AnovaStudy.of(Studies.changed(study, value -> value * by)).variation());
        });
  }

  /** Variances compared: a small one is the difference of two that are not. */
  private static void assertVariation(double scale, GaugeVariation one, GaugeVariation other) {
    double tolerance = 1e-9 * scale * scale * one.tv() * one.tv();
    double square = scale * scale;
    assertEquals(square * one.ev() * one.ev(), other.ev() * other.ev(), tolerance);
    assertEquals(square * one.av() * one.av(), other.av() * other.av(), tolerance);
    assertEquals(square * one.pv() * one.pv(), other.pv() * other.pv(), tolerance);
    assertEquals(square * one.grr() * one.grr(), other.grr() * other.grr(), tolerance);
    assertEquals(one.percentGrr().orElseThrow(), other.percentGrr().orElseThrow(), 1e-5);
  }
}
