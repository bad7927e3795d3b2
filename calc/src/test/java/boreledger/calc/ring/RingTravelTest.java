package boreledger.calc.ring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.bore.BoreProfile;
import boreledger.calc.bore.Gaugings;
import boreledger.calc.bore.Reach;
import boreledger.calc.bore.ThermalUncertainty;
import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.Seeds;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import boreledger.calc.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RingTravelTest {
  private static final double IRON = 11.4e-6;
  private static final Budget FEELER = GapBudget.byFeeler(0.005, 0.02);
  private static final Travel TRAVEL = new Travel(9, 113);
  private static final RunningTemperatures RUNNING = new RunningTemperatures(220, 180, 120);

  private static BoreProfile narrowing() {
    return Gaugings.profile(
        Gaugings.usual(),
        new double[] {12, 60, 108},
        new double[] {96.060},
        new double[] {96.030},
        new double[] {96.020});
  }

  private static RingTravel travel(BoreProfile bore, Travel travel, GapReading... gaps) {
    return new RingTravel(
        new GappedRing(bore, IRON, Ring.of(IRON), List.of(gaps)),
        travel,
        ThermalUncertainty.DEFAULT);
  }

  private static GapReading gap(double depthMm, double gapMm) {
    return new GapReading(depthMm, gapMm, 20, FEELER);
  }

  @Test
  void lengthOfTheRingIsPerimeterLessGap() {
    RingTravel one = travel(narrowing(), TRAVEL, gap(12, 0.50));
    assertEquals(Math.PI * 96.060 - 0.50, one.developedLengthMm(), 1e-9);
  }

  @Test
  void coldGapsAreAtTheEndsAndTheGaugedDepthsBetween() {
    List<GapPoint> cold = travel(narrowing(), TRAVEL, gap(12, 0.50)).cold();
    assertEquals(
        List.of(9.0, 12.0, 60.0, 108.0, 113.0), cold.stream().map(GapPoint::depthMm).toList());
    // Exact geometry: pi times the difference of diameters.
    assertEquals(0.50, cold.get(0).gapMm(), 1e-9);
    assertEquals(0.50 - Math.PI * 0.030, cold.get(2).gapMm(), 1e-9);
    assertEquals(0.50 - Math.PI * 0.040, cold.get(3).gapMm(), 1e-9);
    assertEquals(Reach.ABOVE, cold.get(0).reach());
    assertEquals(Reach.GAUGED, cold.get(1).reach());
    assertEquals(Reach.BELOW, cold.get(4).reach());
  }

  @Test
  void gaugedDepthsOutsideTheTravelDoNotCount() {
    List<GapPoint> cold = travel(narrowing(), new Travel(20, 80), gap(12, 0.50)).cold();
    assertEquals(List.of(20.0, 60.0, 80.0), cold.stream().map(GapPoint::depthMm).toList());
    assertEquals(Reach.BETWEEN, cold.get(0).reach());
  }

  @Test
  void anEndOfTheTravelAtAGaugedDepthIsThereOnce() {
    List<GapPoint> cold = travel(narrowing(), new Travel(12, 108), gap(12, 0.50)).cold();
    assertEquals(List.of(12.0, 60.0, 108.0), cold.stream().map(GapPoint::depthMm).toList());
  }

  @Test
  void tightestOfEqualPointsIsTheGaugedOne() {
    RingTravel one = travel(narrowing(), TRAVEL, gap(12, 0.50));
    assertEquals(108, one.tightestCold().depthMm());
    assertEquals(0.50 - Math.PI * 0.040, one.tightestCold().gapMm(), 1e-9);
  }

  @Test
  void widestOfEqualPointsIsTheGaugedOne() {
    RingTravel one = travel(narrowing(), TRAVEL, gap(12, 0.50));
    assertEquals(12, one.widestCold().depthMm());
    assertEquals(0.50, one.widestCold().gapMm(), 1e-9);
  }

  @Test
  void belowTheReadingsTheCautiousGapGoesOnNarrowing() {
    GapPoint bottom = travel(narrowing(), TRAVEL, gap(12, 0.50)).cold().get(4);
    // 0.010 mm in 48 mm carried on for 5 mm.
    assertEquals(bottom.gapMm() - Math.PI * 0.010 * 5 / 48, bottom.cautiousGapMm(), 1e-9);
    GapPoint gauged = travel(narrowing(), TRAVEL, gap(12, 0.50)).cold().get(3);
    assertEquals(gauged.gapMm(), gauged.cautiousGapMm());
  }

  @Test
  void hotGapIsThatOfTheRoundBoreAtEachDepth() {
    RingTravel one = travel(narrowing(), TRAVEL, gap(12, 0.50));
    List<GapPoint> hot = one.hot(RUNNING);
    assertEquals(5, hot.size());
    // Wall 180 at 9 mm, 120 at 113 mm: 150.58 at 60 mm.
    double wall = 180 - 60.0 * (60 - 9) / (113 - 9);
    double expected =
        new RoundBoreHotGap(96.030, new FreeExpansion(IRON, IRON), wall, 220)
            .hotGapMm(0.50 - Math.PI * 0.030);
    assertEquals(expected, hot.get(2).gapMm(), 1e-9);
    assertEquals(expected, one.hotAt(60, RUNNING).gapMm(), 1e-9);
    assertEquals(hot.get(2).gapMm(), hot.get(2).cautiousGapMm());
    assertTrue(hot.get(4).cautiousGapMm() < hot.get(4).gapMm());
  }

  @Test
  void tightestHotPointIsWhereTheWallIsCoolestInAStraightBore() {
    BoreProfile straight =
        Gaugings.profile(
            Gaugings.usual(), new double[] {12, 108}, new double[] {96}, new double[] {96});
    RingTravel one = travel(straight, TRAVEL, gap(12, 0.50));
    assertEquals(113, one.tightestHot(RUNNING).depthMm());
    assertEquals(9, one.tightestHot(new RunningTemperatures(220, 100, 180)).depthMm());
  }

  @Test
  void noPointBetweenIsTighterThanTheTightest() {
    Seeds.each(
        random -> {
          double[] depths = {10, 50, 90};
          double[][] rows = new double[3][];
          for (int j = 0; j < 3; j++) {
            rows[j] = new double[] {Seeds.between(random, 95.9, 96.1)};
          }
          BoreProfile bore = Gaugings.profile(Gaugings.usual(), depths, rows);
          RingTravel one = travel(bore, new Travel(5, 95), gap(10, 0.6));
          RunningTemperatures running =
              new RunningTemperatures(
                  220, Seeds.between(random, 80, 250), Seeds.between(random, 80, 250));
          double tightest = one.tightestHot(running).gapMm();
          for (double z = 5; z <= 95; z += 4.5) {
            assertTrue(one.hotAt(z, running).gapMm() >= tightest - 1e-9);
            assertTrue(one.coldAt(z).valueMm() >= one.tightestCold().gapMm() - 1e-9);
            assertTrue(one.coldAt(z).valueMm() <= one.widestCold().gapMm() + 1e-9);
          }
        });
  }

  @Test
  void coldGapForAMarginLeavesThatMarginWhereItIsTightestHot() {
    for (double margin : new double[] {0, 0.05, 0.20}) {
      RingTravel before = travel(narrowing(), TRAVEL, gap(108, 0.30));
      double coldMm = before.coldGapForMm(margin, RUNNING);
      RingTravel after = travel(narrowing(), TRAVEL, gap(108, coldMm));
      assertEquals(coldMm, after.tightestCold().gapMm(), 1e-9);
      assertEquals(margin, after.tightestHot(RUNNING).gapMm(), 1e-9);
    }
  }

  @Test
  void coldGapInAStraightBoreOfOneTemperatureIsTheRoundBores() {
    BoreProfile straight =
        Gaugings.profile(
            Gaugings.usual(), new double[] {12, 108}, new double[] {96}, new double[] {96});
    double expected =
        new RoundBoreHotGap(96, new FreeExpansion(IRON, IRON), 130, 220).coldGapForMm(0.1);
    double found =
        travel(straight, TRAVEL, gap(12, 0.5))
            .coldGapForMm(0.1, new RunningTemperatures(220, 130, 130));
    assertEquals(expected, found, 1e-9);
  }

  @Test
  void aMarginThatIsNoNumberIsRefused() {
    RingTravel one = travel(narrowing(), TRAVEL, gap(12, 0.50));
    assertThrows(ImpossibleInput.class, () -> one.coldGapForMm(Double.NaN, RUNNING));
  }

  @Test
  void coldGapWhereItWasReadIsAsUncertainAsItsReading() {
    Estimate found = travel(narrowing(), TRAVEL, gap(12, 0.50)).coldAt(12);
    assertEquals(0.50, found.valueMm(), 1e-9);
    double mpe = found.budget().combinedMm();
    assertEquals(FEELER.combinedMm(), mpe, 1e-9);
  }

  @Test
  void coldGapElsewhereAddsTheBoresChangeAndTheFibre() {
    Ring thick = new Ring(IRON, 6.0);
    Estimate found =
        new RingTravel(
                new GappedRing(narrowing(), IRON, thick, List.of(gap(12, 0.50))),
                TRAVEL,
                ThermalUncertainty.DEFAULT)
            .coldAt(108);
    Budget change =
        new GapChange(narrowing().perimeterAt(12), narrowing().perimeterAt(108), thick)
            .estimate()
            .budget();
    // Both take the wall's share of the bore at another depth, 0.04 mm apart: 1e-6 mm.
    assertEquals(
        Math.hypot(FEELER.combinedMm(), change.combinedMm()), found.standardUncertaintyMm(), 2e-6);
  }

  @Test
  void gapReadWarmCarriesBothCoefficientsAndTheTemperature() {
    RingTravel warm =
        new RingTravel(
            new GappedRing(
                narrowing(),
                21.5e-6,
                Ring.of(IRON),
                List.of(new GapReading(12, 0.5, 28, FEELER), new GapReading(60, 0.4, 14, FEELER))),
            TRAVEL,
            ThermalUncertainty.DEFAULT);
    List<Component> lines = new ArrayList<>(warm.coldAt(12).budget().components());
    double perimeter = Math.PI * 96.060;
    Component temperature = lines.remove(lines.size() - 1);
    Component coefficients = lines.remove(lines.size() - 1);
    assertEquals("temperature of bore and ring", temperature.name());
    assertEquals(perimeter * (21.5e-6 - IRON) * 0.5, temperature.standardUncertaintyMm(), 1e-9);
    assertEquals("expansion coefficients of bore and ring", coefficients.name());
    assertEquals(Math.sqrt(2) * perimeter * 0.5e-6 * 8, coefficients.standardUncertaintyMm(), 1e-9);
  }

  @Test
  void noGapReadingIsRefused() {
    assertEquals(
        "0 gap readings given, at least 1 needed",
        assertThrows(ImpossibleInput.class, () -> travel(narrowing(), TRAVEL)).getMessage());
  }

  @Test
  void travelHoldsItsEnds() {
    assertTrue(TRAVEL.holds(9));
    assertTrue(TRAVEL.holds(113));
    assertFalse(TRAVEL.holds(8.999));
    assertFalse(TRAVEL.holds(113.001));
  }

  @Test
  void aTravelUpsideDownIsRefused() {
    assertEquals(
        "bottom of the travel 9.0 mm is not below its top 9.0 mm",
        assertThrows(ImpossibleInput.class, () -> new Travel(9, 9)).getMessage());
    assertThrows(ImpossibleInput.class, () -> new Travel(-1, 9));
    assertThrows(ImpossibleInput.class, () -> new Travel(1, Double.NaN));
    assertThrows(ImpossibleInput.class, () -> new RunningTemperatures(Double.NaN, 1, 1));
    assertThrows(ImpossibleInput.class, () -> new RunningTemperatures(1, Double.NaN, 1));
    assertThrows(ImpossibleInput.class, () -> new RunningTemperatures(1, 1, Double.NaN));
  }
}
