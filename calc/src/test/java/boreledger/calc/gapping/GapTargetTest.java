package boreledger.calc.gapping;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.decision.Limit;
import boreledger.calc.input.ImpossibleInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class GapTargetTest {
  private static final GapRule PLAIN =
      new GapRule("plain", "top", 0.004, "common practice, no source", "");
  private static final GapRule RAIL =
      new GapRule("plain", "oil", null, "common practice, no source", "verify only");

  @Test
  void ruleIsItsFactorTimesTheBore() {
    // At least 0.004 x bore for a plain engine: common practice, no source. Khurmi & Gupta, A
    // Textbook of Machine Design, section 32.9: 0.002 D to 0.004 D, 0.2 to 0.4 mm for 100 mm.
    GapTarget target = GapTarget.byRule(PLAIN, 100);
    assertEquals(0.4, target.targetMm(), 1e-12);
    assertEquals(0.004, target.factor());
    assertEquals("common practice, no source", target.origin());
    assertNull(target.raise());
  }

  @Test
  void givenFigureKeepsItsOrigin() {
    GapTarget target = GapTarget.given(0.52, "ring maker's figure");
    assertEquals(0.52, target.targetMm());
    assertEquals("ring maker's figure", target.origin());
    assertNull(target.factor());
  }

  @Test
  void aRingThatIsOnlyVerifiedHasNoTarget() {
    assertTrue(RAIL.verifyOnly());
    assertEquals(
        "gap rule for use plain and ring oil has no factor: this ring is only verified",
        assertThrows(ImpossibleInput.class, () -> GapTarget.byRule(RAIL, 96)).getMessage());
  }

  @Test
  void secondRingIsLiftedToTheTopRings() {
    GapTarget top = GapTarget.given(0.50, "ring maker's figure");
    GapTarget second = GapTarget.byRule(PLAIN, 96).notBelowTopRing(top);
    assertEquals(0.50, second.targetMm());
    assertEquals(0.384, second.raise().fromMm(), 1e-12);
    assertEquals(GapTarget.RaisedTo.TOP_RING, second.raise().to());
    assertEquals(0.004, second.factor());
  }

  @Test
  void secondRingAtOrAboveTheTopRingsStays() {
    GapTarget top = GapTarget.given(0.50, "ring maker's figure");
    GapTarget equal = GapTarget.given(0.50, "job");
    assertSame(equal, equal.notBelowTopRing(top));
    GapTarget wider = GapTarget.given(0.55, "job");
    assertSame(wider, wider.notBelowTopRing(top));
  }

  @Test
  void targetBelowTheMakersSmallestGapIsLiftedToIt() {
    GapTarget target = GapTarget.given(0.25, "job").notBelowMinimum(new GapLimits(0.30, 0.60));
    assertEquals(0.30, target.targetMm());
    assertEquals(new GapTarget.Raise(0.25, GapTarget.RaisedTo.MAKERS_SMALLEST_GAP), target.raise());
    GapTarget free = GapTarget.given(0.25, "job");
    assertSame(free, free.notBelowMinimum(GapLimits.NONE));
  }

  @Test
  void impossibleTargetsAreRefused() {
    assertEquals(
        "target gap 0.0 mm is not above zero",
        assertThrows(ImpossibleInput.class, () -> GapTarget.given(0, "job")).getMessage());
    assertThrows(ImpossibleInput.class, () -> GapTarget.byRule(PLAIN, 0));
    assertEquals(
        "factor of the gap rule plain, top -0.004 is not above zero",
        assertThrows(ImpossibleInput.class, () -> new GapRule("plain", "top", -0.004, "", ""))
            .getMessage());
  }

  @Test
  void tableFindsByUseAndRing() {
    GapRules table = new GapRules(List.of(PLAIN, RAIL));
    assertEquals(Optional.of(RAIL), table.find("plain", "oil"));
    assertEquals(Optional.empty(), table.find("plain", "second"));
    assertEquals(Optional.empty(), table.find("boosted", "top"));
    assertEquals(List.of("plain"), table.uses());
  }

  @Test
  void aRowThatIsThereTwiceIsRefused() {
    List<GapRule> rows = new ArrayList<>(List.of(PLAIN, RAIL, PLAIN));
    assertEquals(
        "gap rule for use plain and ring top is there twice",
        assertThrows(ImpossibleInput.class, () -> new GapRules(rows)).getMessage());
  }

  @Test
  void makersLimitsApplyAtTightestAndWidest() {
    GapLimits limits = new GapLimits(0.30, 0.60);
    assertEquals(Optional.of(new Limit.Lower(0.30)), limits.atTightest());
    assertEquals(Optional.of(new Limit.Upper(0.60)), limits.atWidest());
    assertEquals(Optional.empty(), GapLimits.NONE.atTightest());
    assertEquals(Optional.empty(), GapLimits.NONE.atWidest());
  }

  @Test
  void upperHalfNeedsBothLimits() {
    assertEquals(new GapLimits(0.50, 0.75), new GapLimits(0.25, 0.75).upperHalf());
    assertEquals(new GapLimits(0.30, null), new GapLimits(0.30, null).upperHalf());
    assertEquals(new GapLimits(null, 0.60), new GapLimits(null, 0.60).upperHalf());
  }

  @Test
  void limitsInTheWrongOrderAreRefused() {
    assertEquals(
        "smallest gap 0.6 mm is not below the largest gap 0.6 mm",
        assertThrows(ImpossibleInput.class, () -> new GapLimits(0.6, 0.6)).getMessage());
    assertThrows(ImpossibleInput.class, () -> new GapLimits(-0.1, null));
    assertThrows(ImpossibleInput.class, () -> new GapLimits(null, 0.0));
  }

  @Test
  void targetAndLargestGapThatBothHoldFit() {
    assertEquals(new TargetFit.Fits(0.625), TargetFit.of(0.50, 0.125, new GapLimits(0.30, 0.625)));
    assertEquals(new TargetFit.Fits(0.625), TargetFit.of(0.50, 0.125, GapLimits.NONE));
  }

  @Test
  void boreThatSpreadsTheGapTooFarIsAtFault() {
    assertEquals(
        new TargetFit.BoreAtFault(0.50, 0.75, 0.60, false),
        TargetFit.of(0.50, 0.25, new GapLimits(0.30, 0.60)));
    assertEquals(
        new TargetFit.BoreAtFault(0.50, 0.75, 0.60, true),
        TargetFit.of(0.50, 0.25, new GapLimits(0.40, 0.60)));
    assertEquals(
        new TargetFit.BoreAtFault(0.50, 0.75, 0.60, false),
        TargetFit.of(0.50, 0.25, new GapLimits(null, 0.60)));
    assertEquals(
        new TargetFit.BoreAtFault(0.50, 0.75, 0.625, false),
        TargetFit.of(0.50, 0.25, new GapLimits(0.375, 0.625)));
  }

  @Test
  void targetAboveTheLargestGapIsNoFaultOfTheBore() {
    assertEquals(
        new TargetFit.TargetAboveMaximum(0.65, 0.60),
        TargetFit.of(0.65, 0.0, new GapLimits(0.30, 0.60)));
    assertEquals(
        new TargetFit.BoreAtFault(0.60, 0.625, 0.60, false),
        TargetFit.of(0.60, 0.025, new GapLimits(0.30, 0.60)));
  }
}
