package boreledger.calc.gapping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;

import boreledger.calc.bore.BoreProfile;
import boreledger.calc.bore.Gaugings;
import boreledger.calc.bore.ThermalUncertainty;
import boreledger.calc.decision.State;
import boreledger.calc.ring.GapReading;
import boreledger.calc.ring.GappedRing;
import boreledger.calc.ring.Ring;
import boreledger.calc.ring.RingTravel;
import boreledger.calc.ring.Travel;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import java.util.List;
import org.junit.jupiter.api.Test;

class RingVerdictTest {
  private static final GapLimits LIMITS = new GapLimits(0.30, 0.60);

  /** Wide at the top: the gap at 12 mm is pi x 0.03 mm wider than at 108 mm. */
  private static RingTravel gapAtTop(double gapMm) {
    BoreProfile bore =
        Gaugings.profile(
            Gaugings.usual(), new double[] {12, 108}, new double[] {96.03}, new double[] {96.00});
    Budget budget = Budget.of(Component.typeB("gauge", 0.001));
    return new RingTravel(
        new GappedRing(bore, 11e-6, Ring.of(11e-6), List.of(new GapReading(12, gapMm, 20, budget))),
        new Travel(12, 108),
        ThermalUncertainty.DEFAULT);
  }

  private static final double SPREAD = Math.PI * 0.03;

  private static RingVerdict verdict(double gapAtTop, double target) {
    return RingVerdict.of(gapAtTop(gapAtTop), GapTarget.given(target, "job"), LIMITS);
  }

  @Test
  void whatIsToRemoveCountsFromTheTightestPoint() {
    RingVerdict found = verdict(0.45, 0.48);
    assertEquals(108, found.tightest().depthMm());
    assertEquals(0.48 - (0.45 - SPREAD), found.removeMm(), 1e-9);
    assertEquals(RingState.FILE, found.state());
    assertEquals("file", found.state().word());
    assertEquals(0.45 - SPREAD, found.gap().valueMm(), 1e-9);
    assertEquals(0.45, found.widest().gapMm(), 1e-9);
  }

  @Test
  void nothingIsToRemoveFromAGapAboveItsTarget() {
    RingVerdict found = verdict(0.55, 0.40);
    assertEquals(0, found.removeMm());
    assertEquals("ready", found.state().word());
  }

  @Test
  void remainderWithinItsUncertaintyIsReady() {
    double u = verdict(0.45, 0.40).gap().expandedUncertaintyMm();
    double tightest = verdict(0.45, 0.40).tightest().gapMm();
    assertEquals(RingState.READY, verdict(0.45, tightest + u - 1e-6).state());
    assertEquals(RingState.FILE, verdict(0.45, tightest + u + 1e-6).state());
  }

  @Test
  void gapAboveTheLargestAtTheWidestPointIsTooWide() {
    RingVerdict found = verdict(0.61, 0.40);
    assertEquals("too-wide", found.state().word());
    assertEquals(RingState.READY, verdict(0.599, 0.40).state());
    assertEquals(
        RingState.READY,
        RingVerdict.of(gapAtTop(0.61), GapTarget.given(0.40, "job"), GapLimits.NONE).state());
  }

  @Test
  void tooWideStandsAboveFiling() {
    assertEquals(RingState.TOO_WIDE, verdict(0.61, 0.58).state());
  }

  @Test
  void boreThatCannotKeepBothIsNamed() {
    RingVerdict found = verdict(0.55, 0.52);
    TargetFit.BoreAtFault fault = assertInstanceOf(TargetFit.BoreAtFault.class, found.fit());
    assertEquals(0.52 + SPREAD, fault.widestMm(), 1e-9);
    assertInstanceOf(TargetFit.Fits.class, verdict(0.45, 0.50).fit());
  }

  @Test
  void targetBelowTheMakersSmallestGapCountsAsThat() {
    RingVerdict found = verdict(0.35, 0.20);
    assertEquals(0.30, found.target().targetMm());
    assertEquals(0.30 - (0.35 - SPREAD), found.removeMm(), 1e-9);
  }

  @Test
  void unknownHasItsWord() {
    assertEquals("unknown", RingState.UNKNOWN.word());
  }

  @Test
  void railWithinTheMakersLimitsIsReady() {
    OilRail rail = OilRail.verify(gapAtTop(0.45), LIMITS, false);
    assertEquals(RingState.READY, rail.state());
    assertEquals(State.WITHIN, rail.tightest().state());
    assertEquals(State.WITHIN, rail.widest().state());
  }

  @Test
  void railUnderAddedBoostIsWantedInTheUpperHalf() {
    OilRail rail = OilRail.verify(gapAtTop(0.45), LIMITS, true);
    assertEquals(new GapLimits((0.30 + 0.60) / 2, 0.60), rail.wanted());
    assertEquals(State.BEYOND, rail.tightest().state());
    assertEquals(RingState.UNKNOWN, rail.state());
  }

  @Test
  void railAboveTheLargestGapIsTooWide() {
    assertEquals(RingState.TOO_WIDE, OilRail.verify(gapAtTop(0.65), LIMITS, false).state());
  }

  @Test
  void railWithOneLimitIsJudgedByIt() {
    OilRail least = OilRail.verify(gapAtTop(0.45), new GapLimits(0.30, null), false);
    assertNull(least.widest());
    assertEquals(RingState.READY, least.state());
    OilRail most = OilRail.verify(gapAtTop(0.45), new GapLimits(null, 0.60), false);
    assertNull(most.tightest());
    assertEquals(RingState.READY, most.state());
  }

  @Test
  void railWithoutLimitsIsUnknown() {
    assertEquals(RingState.UNKNOWN, OilRail.verify(gapAtTop(0.45), GapLimits.NONE, false).state());
  }
}
