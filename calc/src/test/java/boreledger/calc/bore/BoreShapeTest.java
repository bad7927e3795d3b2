package boreledger.calc.bore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.Seeds;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BoreShapeTest {
  private static final double[] DEPTHS = {12, 60, 108};

  private static BoreProfile profile(double... diametersMm) {
    double[][] rows = new double[diametersMm.length][];
    for (int j = 0; j < rows.length; j++) {
      rows[j] = new double[] {diametersMm[j], diametersMm[j]};
    }
    double[] depths = new double[rows.length];
    System.arraycopy(
        rows.length <= 3 ? DEPTHS : new double[] {12, 36, 60, 84, 108}, 0, depths, 0, rows.length);
    return Gaugings.profile(Gaugings.usual(), depths, rows);
  }

  private static String shape(double... diametersMm) {
    return BoreShape.of(profile(diametersMm), IntendedProfile.STRAIGHT).orElseThrow().word();
  }

  @Test
  void everyShapeHasItsWord() {
    assertEquals("straight", shape(96.000, 96.000, 96.000));
    assertEquals("wide-at-top", shape(96.030, 96.015, 96.000));
    assertEquals("wide-at-bottom", shape(96.000, 96.015, 96.030));
    assertEquals("barrel", shape(96.000, 96.030, 96.000));
    assertEquals("waist", shape(96.030, 96.000, 96.030));
  }

  @Test
  void differencesWithinTheirUncertaintyAreStraight() {
    assertEquals("straight", shape(96.001, 96.000, 96.000));
    assertEquals("straight", shape(96.000, 96.001, 96.000));
  }

  @Test
  void differenceThatJustStandsOutIsNamed() {
    // The difference of two means of two axes with its budget, at its expanded uncertainty.
    BoreProfile straight = profile(96.0, 96.0, 96.0);
    double limitMm =
        straight
            .sections()
            .get(0)
            .mean()
            .minus(straight.sections().get(2).mean())
            .estimate()
            .expandedUncertaintyMm();
    assertEquals("straight", shape(96 + limitMm - 1e-6, 96, 96));
    assertEquals("wide-at-top", shape(96 + limitMm + 1e-6, 96, 96));
    assertEquals("straight", shape(96, 96, 96 + limitMm - 1e-6));
    assertEquals("wide-at-bottom", shape(96, 96, 96 + limitMm + 1e-6));
    assertEquals("straight", shape(96, 96 + limitMm - 1e-6, 96));
    assertEquals("barrel", shape(96, 96 + limitMm + 1e-6, 96));
    assertEquals("straight", shape(96, 96 - limitMm + 1e-6, 96));
    assertEquals("waist", shape(96, 96 - limitMm - 1e-6, 96));
  }

  @Test
  void theLargerOfTwoEffectsGivesTheName() {
    // Middle 0.010 under both ends, ends 0.040 apart: the ends lead.
    assertEquals("wide-at-top", shape(96.060, 96.010, 96.020));
    // Middle 0.020 under both ends, ends 0.010 apart: the middle leads.
    assertEquals("waist", shape(96.040, 96.010, 96.030));
    assertEquals("barrel", shape(96.010, 96.040, 96.020));
    assertEquals("wide-at-bottom", shape(96.000, 96.050, 96.040));
  }

  @Test
  void aStepInTheMiddleIsNoBarrel() {
    assertEquals("wide-at-bottom", shape(96.000, 96.030, 96.030));
    assertEquals("wide-at-top", shape(96.030, 96.030, 96.000));
    assertEquals("wide-at-top", shape(96.030, 96.000, 96.000));
  }

  @Test
  void theStrongestOfSeveralMiddlesCounts() {
    assertEquals("barrel", shape(96.000, 96.010, 96.030, 95.990, 96.000));
    assertEquals("waist", shape(96.000, 96.010, 95.970, 96.000, 96.000));
  }

  @Test
  void twoDepthsKnowOnlyTheirEnds() {
    assertEquals("wide-at-top", shape(96.030, 96.000));
    assertEquals("straight", shape(96.000, 96.000));
  }

  @Test
  void oneDepthHasNoShape() {
    assertEquals(Optional.empty(), BoreShape.of(profile(96.0), IntendedProfile.STRAIGHT));
    assertEquals(Optional.empty(), WearLine.of(profile(96.0), IntendedProfile.STRAIGHT));
  }

  @Test
  void intendedChokeIsTakenOffFirst() {
    IntendedProfile choke = new IntendedProfile(Map.of(12.0, -0.030, 60.0, -0.010, 108.0, 0.0));
    BoreProfile asMeant = profile(95.970, 95.990, 96.000);
    assertEquals(Optional.of(BoreShape.STRAIGHT), BoreShape.of(asMeant, choke));
    assertEquals("wide-at-bottom", shape(95.970, 95.990, 96.000));
    assertEquals(
        Optional.of(BoreShape.WIDE_AT_TOP), BoreShape.of(profile(96.0, 96.0, 96.0), choke));
    assertEquals(0, WearLine.of(asMeant, choke).orElseThrow().change().valueMm(), 1e-9);
  }

  @Test
  void aDepthWithoutItsIntendedChokeIsRefused() {
    IntendedProfile choke = new IntendedProfile(Map.of(12.0, -0.030, 108.0, 0.0));
    assertEquals(
        "no intended choke given at depth 60.0 mm",
        assertThrows(ImpossibleInput.class, () -> BoreShape.of(profile(96.0, 96.0, 96.0), choke))
            .getMessage());
    assertThrows(ImpossibleInput.class, () -> new IntendedProfile(Map.of(-1.0, 0.0)));
    assertThrows(ImpossibleInput.class, () -> new IntendedProfile(Map.of(1.0, Double.NaN)));
  }

  @Test
  void wearLineRisesAsTheFittedLine() {
    WearLine wear =
        WearLine.of(profile(96.030, 96.012, 96.000), IntendedProfile.STRAIGHT).orElseThrow();
    // Least squares by hand: slope (96.000 - 96.030) / 96 = -0.0003125 for evenly spaced depths.
    assertEquals(-0.0003125, wear.slope(), 1e-10);
    assertEquals(-0.030, wear.change().valueMm(), 1e-9);
    assertEquals(96, wear.lengthMm());
  }

  @Test
  void wearLineOfTwoDepthsHasTheBudgetOfTheirDifference() {
    BoreProfile two = profile(96.030, 96.000);
    WearLine wear = WearLine.of(two, IntendedProfile.STRAIGHT).orElseThrow();
    double difference =
        two.sections()
            .get(0)
            .mean()
            .minus(two.sections().get(1).mean())
            .estimate()
            .standardUncertaintyMm();
    assertEquals(difference, wear.change().standardUncertaintyMm(), 1e-12);
    assertEquals(difference / 48, wear.slopeStandardUncertainty(), 1e-14);
  }

  @Test
  void slopeOfABentBoreIsAsUncertainAsItsScatter() {
    WearLine wear =
        WearLine.of(profile(96.000, 96.100, 96.000), IntendedProfile.STRAIGHT).orElseThrow();
    assertEquals(
        wear.line().slopeStandardUncertainty().orElseThrow(), wear.slopeStandardUncertainty());
  }

  @Test
  void straightBoreHasNoWearLineToSpeakOf() {
    Seeds.each(
        random -> {
          double d = Seeds.between(random, 60, 120);
          WearLine wear = WearLine.of(profile(d, d, d), IntendedProfile.STRAIGHT).orElseThrow();
          assertEquals(0, wear.change().valueMm(), 1e-11);
          assertEquals("straight", shape(d, d, d));
        });
  }
}
