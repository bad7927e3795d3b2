package boreledger.calc.ring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.bore.BoreProfile;
import boreledger.calc.bore.GaugeAccuracy;
import boreledger.calc.bore.Gaugings;
import boreledger.calc.bore.Reach;
import boreledger.calc.bore.Repeatability;
import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.Seeds;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import boreledger.calc.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class GappedRingTest {
  private static final double IRON = 11.4e-6;
  private static final double ALUMINIUM = 21.5e-6;
  private static final Budget FEELER = GapBudget.byFeeler(0.005, 0.02);
  private static final double[] DEPTHS = {12, 36, 60, 84, 108};

  private static BoreProfile worn() {
    return Gaugings.profile(
        Gaugings.usual(),
        DEPTHS,
        new double[] {96.061, 96.047},
        new double[] {96.044, 96.036},
        new double[] {96.033, 96.028},
        new double[] {96.026, 96.020},
        new double[] {96.020, 96.012});
  }

  private static GapReading gap(double depthMm, double gapMm) {
    return new GapReading(depthMm, gapMm, 20, FEELER);
  }

  private static GappedRing ring(GapReading... gaps) {
    return new GappedRing(worn(), IRON, Ring.of(IRON), List.of(gaps));
  }

  @Test
  void gapChangesByThePerimeter() {
    // Exact geometry: pi times 0.010 mm.
    BoreProfile bore =
        Gaugings.profile(
            Gaugings.usual(), new double[] {10, 50}, new double[] {96.01}, new double[] {96.02});
    GapChange change = new GapChange(bore.perimeterAt(10), bore.perimeterAt(50), Ring.of(IRON));
    assertEquals(0.031415926535898, change.estimate().valueMm(), 1e-9);
  }

  @Test
  void gapChangesBudgetHasTheFibreAndNothingShared() {
    BoreProfile bore = worn();
    Budget budget =
        new GapChange(bore.perimeterAt(12), bore.perimeterAt(108), new Ring(IRON, 3.0))
            .estimate()
            .budget();
    double changeMm = bore.perimeterAt(12).lengthMm() - bore.perimeterAt(108).lengthMm();
    double fibre = changeMm * 3 / ((96.054 - 3) * 1.7320508075688772);
    Component last = budget.components().get(budget.components().size() - 1);
    assertEquals("neutral fibre of the ring", last.name());
    assertEquals(fibre, last.standardUncertaintyMm(), 1e-8);
    assertFalse(budget.components().stream().anyMatch(each -> each.name().startsWith("setting")));
    assertFalse(budget.components().stream().anyMatch(each -> each.name().startsWith("block")));
  }

  @Test
  void usualWallIsATwentyFourthOfTheBore() {
    Component usual = Ring.of(IRON).fibre(-0.1, 96);
    assertEquals(new Ring(IRON, 4.0).fibre(0.1, 96), usual);
    assertEquals(0.1 * 4 / (92 * 1.7320508075688772), usual.standardUncertaintyMm(), 1e-15);
  }

  @Test
  void aWallOfHalfTheBoreIsRefused() {
    assertEquals(
        "radial wall 48.0 mm is not below half the bore of 96.0 mm",
        assertThrows(ImpossibleInput.class, () -> new Ring(IRON, 48.0).fibre(0.1, 96))
            .getMessage());
    assertThrows(ImpossibleInput.class, () -> new Ring(IRON, 0.0));
    assertThrows(ImpossibleInput.class, () -> new Ring(Double.NaN, null));
  }

  @Test
  void expectedChangeCountsFromTheShallowestGap() {
    List<GapAgreement> found = ring(gap(60, 0.44), gap(12, 0.50)).agreements();
    assertEquals(12, found.get(0).reading().depthMm());
    assertEquals(0, found.get(0).expectedChangeMm());
    // Means 96.054 and 96.0305: pi times -0.0235, the oval adds nanometres.
    assertEquals(-Math.PI * 0.0235, found.get(1).expectedChangeMm(), 2e-6);
  }

  @Test
  void oneDepthHasNothingToBeComparedWith() {
    GapAgreement only = ring(gap(12, 0.5)).agreements().get(0);
    assertEquals(new Expectation.TooFewDepths(1, 2), only.expectation());
    assertNull(only.expectation().expectedMm());
    assertNull(only.expectation().en());
    assertEquals(List.of(), ring().agreements());
  }

  @Test
  void exactGapsAreExpectedExactly() {
    Seeds.each(
        random -> {
          double lengthMm = Math.PI * 96 - Seeds.between(random, 0.2, 0.6);
          double tempC = Seeds.between(random, 10, 35);
          List<GapAgreement> found = exact(random, lengthMm, tempC).agreements();
          assertEquals(5, found.size());
          for (GapAgreement each : found) {
            assertEquals(each.atReferenceMm(), each.expectation().expectedMm(), 1e-10);
            assertEquals(0, each.expectation().en(), 1e-7);
          }
        });
  }

  private static GappedRing exact(Random random, double lengthMm, double tempC) {
    BoreProfile bore = worn();
    List<GapReading> gaps = new ArrayList<>();
    for (double depth : DEPTHS) {
      double boreMm = bore.perimeterAt(depth).lengthMm() * (1 + ALUMINIUM * (tempC - 20));
      double ringMm = lengthMm * (1 + IRON * (tempC - 20));
      double u = Seeds.between(random, 0.002, 0.02);
      gaps.add(
          new GapReading(depth, boreMm - ringMm, tempC, Budget.of(Component.typeB("feeler", u))));
    }
    return new GappedRing(bore, ALUMINIUM, Ring.of(IRON), gaps);
  }

  @Test
  void gapReadInAWarmAluminiumBoreIsBroughtToTwentyDegrees() {
    // 100 mm round, 5 K: the aluminium grows 1.155e-4, the ring 0.575e-4 of pi D (coefficients of
    // D. A. Swyt, J. Res. NIST 99 (1994) 31): the warm gap is wider by pi x 5.80 um.
    BoreProfile bore =
        Gaugings.profile(
            Gaugings.usual(), new double[] {10, 50}, new double[] {100}, new double[] {100});
    GapReading warm = new GapReading(10, 0.4, 25, FEELER);
    GapAgreement found =
        new GappedRing(bore, 23.1e-6, Ring.of(11.5e-6), List.of(warm)).agreements().get(0);
    assertEquals(0.4 - Math.PI * 0.00580, found.atReferenceMm(), 3e-5);
    assertEquals(0.4, found.reading().gapMm());
  }

  @Test
  void betterReadingsCountForMore() {
    Budget good = Budget.of(Component.typeB("gauge", 0.001));
    Budget poor = Budget.of(Component.typeB("feeler", 0.1));
    BoreProfile bore =
        Gaugings.profile(
            Gaugings.usual(),
            new double[] {10, 50, 90},
            new double[] {96},
            new double[] {96},
            new double[] {96});
    GappedRing ring =
        new GappedRing(
            bore,
            IRON,
            Ring.of(IRON),
            List.of(
                new GapReading(10, 0.40, 20, good),
                new GapReading(50, 0.60, 20, poor),
                new GapReading(90, 0.40, 20, good)));
    double expected = ring.agreements().get(2).expectation().expectedMm();
    double bores = bore.perimeterAt(10).budget().combinedMm();
    double w1 = 1 / (bores * bores + 1e-6);
    double w2 = 1 / (bores * bores + 1e-2);
    assertEquals((w1 * 0.4 + w2 * 0.6) / (w1 + w2), expected, 1e-9);
  }

  @Test
  void scoreIsTheDifferenceOverBothExpandedUncertainties() {
    // ISO 13528, E_n with expanded uncertainties.
    GapAgreement one = ring(gap(12, 0.50), gap(108, 0.45)).agreements().get(0);
    Expectation.Predicted predicted = (Expectation.Predicted) one.expectation();
    double both = Math.hypot(FEELER.expandedMm(), predicted.gap().expandedUncertaintyMm());
    assertEquals((0.50 - predicted.gap().valueMm()) / both, predicted.en(), 1e-12);
    assertTrue(predicted.en() < 0);
  }

  @Test
  void agreementEndsAtOne() {
    assertTrue(scored(1).agrees());
    assertTrue(scored(-1).agrees());
    assertFalse(scored(1.0001).agrees());
    assertFalse(scored(-1.0001).agrees());
  }

  private static Expectation.Predicted scored(double score) {
    return new Expectation.Predicted(new Estimate(0.4, FEELER), score);
  }

  @Test
  void expectedGapsBudgetIsOfTwoPerimetersTheOtherGapAndTheFibre() {
    GapAgreement one = ring(gap(12, 0.50), gap(108, 0.45)).agreements().get(0);
    Budget found = ((Expectation.Predicted) one.expectation()).gap().budget();
    BoreProfile bore = worn();
    Budget change =
        new GapChange(bore.perimeterAt(12), bore.perimeterAt(108), Ring.of(IRON))
            .estimate()
            .budget();
    assertEquals(Math.hypot(change.combinedMm(), FEELER.combinedMm()), found.combinedMm(), 1e-6);
    assertTrue(
        found.components().stream()
            .anyMatch(each -> each.name().equals("gap reading at 108.0 mm")));
  }

  @Test
  void gapBeyondTheBoreReadingsIsMarked() {
    List<GapAgreement> found = ring(gap(5, 0.5), gap(115, 0.4)).agreements();
    assertEquals(Reach.ABOVE, found.get(0).perimeter().reach());
    assertEquals(Reach.BELOW, found.get(1).perimeter().reach());
  }

  @Test
  void feelersBudgetIsTheLeafAndHalfTheStep() {
    Budget feeler = GapBudget.byFeeler(0.005, 0.02);
    double squares = 0.005 * 0.005 / 3 + 0.01 * 0.01 / 3;
    assertEquals(Math.sqrt(squares), feeler.combinedMm(), 1e-15);
  }

  @Test
  void gaugesBudgetLeavesOutWhatItsPermissibleErrorHolds() {
    Repeatability scatter = new Repeatability(0.003, 12, 1);
    Budget all = GapBudget.byGauge(GaugeAccuracy.of(0.01, 0.02), scatter);
    assertEquals(3, all.components().size());
    double squares = 0.02 * 0.02 / 3 + 0.01 * 0.01 / 12 + 0.003 * 0.003;
    assertEquals(Math.sqrt(squares), all.combinedMm(), 1e-15);
    assertEquals(12, all.components().get(2).degreesOfFreedom());
    Budget only = GapBudget.byGauge(new GaugeAccuracy(0.01, 0.02, true, true), scatter);
    assertEquals(1, only.components().size());
    assertEquals(2, GapBudget.byGauge(GaugeAccuracy.of(0.01, 0.02), null).components().size());
  }

  @Test
  void twoGapsAtOneDepthAreRefused() {
    assertEquals(
        "two gaps given at depth 12.0 mm",
        assertThrows(ImpossibleInput.class, () -> ring(gap(12, 0.5), gap(12, 0.4))).getMessage());
  }

  @Test
  void impossibleGapsAreRefused() {
    assertEquals(
        "gap -0.02 mm is negative",
        assertThrows(ImpossibleInput.class, () -> gap(12, -0.02)).getMessage());
    assertThrows(ImpossibleInput.class, () -> gap(-1, 0.4));
    assertThrows(ImpossibleInput.class, () -> new GapReading(1, 0.4, Double.NaN, FEELER));
    assertEquals(
        "standard uncertainty of a gap 0.0 mm is not above zero",
        assertThrows(ImpossibleInput.class, () -> new GapReading(1, 0.4, 20, new Budget(List.of())))
            .getMessage());
    assertThrows(
        ImpossibleInput.class, () -> new GappedRing(worn(), Double.NaN, Ring.of(IRON), List.of()));
  }
}
