package boreledger.calc.oversize;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.bore.BoreProfile;
import boreledger.calc.bore.Gaugings;
import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.Seeds;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EngineAdviceTest {
  private static final Oversizes LISTED = new Oversizes(96, List.of(1.0, 0.25, 0.5), 0.05);
  private static final HoningLimits LIMITS = new HoningLimits(96.0, 96.03, 96.15, null, null);

  private static WornCylinder cylinder(int number, double largest, double smallest) {
    return new WornCylinder(number, largest, smallest, 0.004, smallest, null);
  }

  private static EngineAdvice advice(WornCylinder... cylinders) {
    return EngineAdvice.of(List.of(cylinders), LISTED, LIMITS);
  }

  @Test
  void smallestOversizeThatCleansTheWorstCylinderIsAdvised() {
    // Arithmetic: 96.25 - 0.05 = 96.20 is below 96.21 + 0.004; 96.50 - 0.05 is not.
    EngineAdvice found = advice(cylinder(1, 96.21, 96.05), cylinder(2, 96.08, 96.04));
    assertEquals(Cure.OVERSIZE, found.cure());
    assertEquals("oversize", found.cure().word());
    assertEquals(0.5, found.oversizeMm());
    assertEquals(96.5, found.cylinders().get(0).finishedMm());
    assertEquals(96.5, found.cylinders().get(1).finishedMm());
    assertFalse(found.largestListed());
  }

  @Test
  void eachCylinderHasItsOwnSmallestOversize() {
    EngineAdvice found = advice(cylinder(1, 96.21, 96.05), cylinder(2, 96.08, 96.04));
    assertEquals(0.5, found.cylinders().get(0).oversizeMm());
    assertEquals(0.25, found.cylinders().get(1).oversizeMm());
  }

  @Test
  void oneSidedWearOnTheOriginalCentreNeedsMore() {
    // 2 x 96.15 - 96.02 + 0.004 = 96.284 against 96.154 on the worn centre.
    EngineAdvice found = advice(cylinder(1, 96.15, 96.02));
    assertEquals(96.154, found.cylinders().get(0).cylinder().neededOnWornCentreMm(), 1e-9);
    assertEquals(96.284, found.cylinders().get(0).cylinder().neededOnOriginalCentreMm(), 1e-9);
    assertEquals(0.25, found.oversizeMm());
    assertEquals(0.5, found.oversizeOnOriginalCentreMm());
    assertEquals(0.5, found.cylinders().get(0).oversizeOnOriginalCentreMm());
  }

  @Test
  void anExactFitCleansUp() {
    // 96.196 + 0.004 = 96.20 = 96.25 - 0.05.
    assertEquals(Optional.of(0.25), LISTED.smallestFor(96.196 + 0.004));
    assertEquals(Optional.of(0.5), LISTED.smallestFor(96.196 + 0.005));
    assertEquals(96.2, LISTED.boredMm(0.25), 1e-12);
    assertEquals(96.25, LISTED.finishedMm(0.25), 1e-12);
  }

  @Test
  void largestListedOversizeIsMarked() {
    EngineAdvice found = advice(cylinder(1, 96.60, 96.40));
    assertEquals(1.0, found.oversizeMm());
    assertTrue(found.largestListed());
  }

  @Test
  void beyondTheLargestOversizeNoneIsAdvised() {
    EngineAdvice found = advice(cylinder(1, 96.96, 96.40), cylinder(2, 96.1, 96.0));
    assertEquals("sleeve-or-block", found.cure().word());
    assertNull(found.oversizeMm());
    assertNull(found.oversizeOnOriginalCentreMm());
    assertNull(found.cylinders().get(0).oversizeMm());
    assertNull(found.cylinders().get(0).oversizeOnOriginalCentreMm());
    assertNull(found.cylinders().get(0).finishedMm());
    assertEquals(0.25, found.cylinders().get(1).oversizeMm());
    assertFalse(found.largestListed());
  }

  @Test
  void noListedOversizeAdvisesNone() {
    EngineAdvice found =
        EngineAdvice.of(
            List.of(cylinder(1, 96.2, 96.0)), new Oversizes(96, List.of(), 0.05), LIMITS);
    assertEquals(Cure.SLEEVE_OR_BLOCK, found.cure());
  }

  @Test
  void engineThatHoningCleansIsHoned() {
    EngineAdvice found = advice(cylinder(1, 96.020, 96.000), cylinder(2, 96.026, 96.010));
    assertEquals("hone", found.cure().word());
    assertEquals(96.024, found.cylinders().get(0).finishedMm(), 1e-9);
    assertEquals(96.030, found.cylinders().get(1).finishedMm(), 1e-9);
    assertTrue(found.cylinders().get(0).honing().enough());
    assertEquals(0.25, found.oversizeMm());
  }

  @Test
  void oneCylinderThatHoningCannotCleanTakesAllToTheOversize() {
    EngineAdvice found = advice(cylinder(1, 96.020, 96.000), cylinder(2, 96.040, 96.010));
    assertEquals(Cure.OVERSIZE, found.cure());
    assertTrue(found.cylinders().get(0).honing().enough());
    assertEquals(
        List.of(HoningBar.Why.ABOVE_LARGEST_BORE), whys(found.cylinders().get(1).honing()));
    assertEquals(96.25, found.cylinders().get(0).finishedMm());
  }

  private static List<HoningBar.Why> whys(Honing honing) {
    return honing.bars().stream().map(HoningBar::why).toList();
  }

  @Test
  void everyReasonAgainstHoningIsTold() {
    WornCylinder worn = new WornCylinder(1, 96.16, 96.05, 0.004, 96.05, 95.95);
    Honing found = Honing.of(worn, 0.05, new HoningLimits(96.0, 96.03, 96.15, 0.05, 0.10));
    assertEquals(
        List.of(
            HoningBar.Why.ABOVE_WEAR_LIMIT,
            HoningBar.Why.TOO_MUCH_STOCK,
            HoningBar.Why.ABOVE_LARGEST_BORE,
            HoningBar.Why.TOO_MUCH_CLEARANCE),
        whys(found));
    assertEquals(96.16, found.bars().get(0).valueMm());
    assertEquals(96.15, found.bars().get(0).limitMm());
    assertEquals(0.11, found.bars().get(1).valueMm(), 1e-9);
    assertEquals(0.05, found.bars().get(1).limitMm());
    assertEquals(96.164, found.bars().get(2).valueMm(), 1e-9);
    assertEquals(0.214, found.bars().get(3).valueMm(), 1e-9);
    assertFalse(found.enough());
  }

  @Test
  void stockUpToTheHoningAllowanceIsAllowed() {
    HoningLimits none = HoningLimits.NONE;
    assertTrue(Honing.of(cylinder(1, 96.05, 96.00), 0.05, none).enough());
    assertFalse(Honing.of(cylinder(1, 96.0501, 96.00), 0.05, none).enough());
  }

  @Test
  void limitsThatAreNotKnownBarNothing() {
    assertTrue(Honing.of(cylinder(1, 96.9, 96.89), 0.05, HoningLimits.NONE).enough());
  }

  @Test
  void boreBelowTheSmallestIsHonedUpToIt() {
    Honing found = Honing.of(cylinder(1, 95.98, 95.97), 0.05, LIMITS);
    assertEquals(96.0, found.finishedMm());
    assertTrue(found.enough());
    // 96.000 - 0.004 - 95.940 = 0.056 mm of stock.
    Honing tooTight = Honing.of(cylinder(1, 95.95, 95.94), 0.05, LIMITS);
    assertEquals(List.of(HoningBar.Why.TOO_MUCH_STOCK), whys(tooTight));
  }

  @Test
  void tightPistonIsGivenItsSmallestClearance() {
    WornCylinder tight = new WornCylinder(1, 96.010, 96.005, 0.002, 96.005, 95.985);
    HoningLimits limits = new HoningLimits(96.0, 96.05, 96.15, 0.04, 0.08);
    Honing found = Honing.of(tight, 0.05, limits);
    assertEquals(96.025, found.finishedMm(), 1e-9);
    assertTrue(found.enough());
  }

  @Test
  void pistonsClearanceIsThatInTheFinishedBore() {
    WornCylinder measured = new WornCylinder(1, 96.020, 96.000, 0.004, 96.000, 95.96);
    EngineAdvice found =
        EngineAdvice.of(
            List.of(measured), LISTED, new HoningLimits(96.0, 96.03, 96.15, 0.03, 0.08));
    assertEquals(96.024 - 95.96, found.cylinders().get(0).clearanceMm(), 1e-9);
    assertNull(advice(cylinder(1, 96.02, 96.0)).cylinders().get(0).clearanceMm());
    WornCylinder hopeless = new WornCylinder(1, 97.2, 96.0, 0.004, 96.0, 95.96);
    assertNull(advice(hopeless).cylinders().get(0).clearanceMm());
  }

  @Test
  void gaugedCylinderBringsItsOwnUncertainty() {
    BoreProfile bore =
        Gaugings.profile(
            Gaugings.usual(),
            new double[] {12, 108},
            new double[] {96.08, 96.05},
            new double[] {96.02, 96.01});
    WornCylinder found = WornCylinder.of(3, bore, 95.9);
    assertEquals(3, found.cylinder());
    assertEquals(96.08, found.largestMm(), 1e-9);
    assertEquals(96.01, found.smallestMm(), 1e-9);
    assertEquals(96.01, found.unwornMm(), 1e-9);
    assertEquals(95.9, found.pistonMm());
    assertEquals(
        bore.largest().size().expandedUncertaintyMm(), found.expandedUncertaintyMm(), 1e-12);
  }

  @Test
  void advisedOversizeIsTheSmallestThatCleans() {
    Seeds.each(
        random -> {
          double largest = Seeds.between(random, 95.9, 97.1);
          double u = Seeds.between(random, 0, 0.01);
          WornCylinder one = new WornCylinder(1, largest, 95.9, u, 95.9, null);
          Double found = advice(one).oversizeMm();
          for (double each : List.of(0.25, 0.5, 1.0)) {
            boolean cleans = 96 + each - 0.05 >= largest + u;
            boolean advisedOrSmaller = found != null && found <= each;
            assertEquals(cleans, advisedOrSmaller, "oversize " + each + " largest " + largest);
          }
        });
  }

  @Test
  void impossibleNumbersAreRefused() {
    assertEquals(
        "smallest diameter 96.1 mm is above the largest 96.0 mm",
        assertThrows(ImpossibleInput.class, () -> cylinder(1, 96.0, 96.1)).getMessage());
    assertEquals(
        "unworn diameter 96.1 mm is above the largest 96.0 mm",
        assertThrows(ImpossibleInput.class, () -> new WornCylinder(1, 96.0, 95.9, 0, 96.1, null))
            .getMessage());
    assertThrows(ImpossibleInput.class, () -> new WornCylinder(1, 96, 0, 0, 96, null));
    assertThrows(ImpossibleInput.class, () -> new WornCylinder(1, Double.NaN, 96, 0, 96, null));
    assertThrows(ImpossibleInput.class, () -> new WornCylinder(1, 96, 96, -1, 96, null));
    assertThrows(ImpossibleInput.class, () -> new WornCylinder(1, 96, 96, 0, 0, null));
    assertThrows(ImpossibleInput.class, () -> new WornCylinder(1, 96, 96, 0, 96, 0.0));
    assertThrows(ImpossibleInput.class, () -> new Oversizes(0, List.of(), 0));
    assertThrows(ImpossibleInput.class, () -> new Oversizes(96, List.of(0.0), 0));
    assertThrows(ImpossibleInput.class, () -> new Oversizes(96, List.of(), -1));
    assertEquals(
        "0 cylinders given, at least 1 needed",
        assertThrows(ImpossibleInput.class, () -> advice()).getMessage());
  }

  @Test
  void cylinderWithoutWearIsAllowed() {
    WornCylinder even = new WornCylinder(1, 96, 96, 0, 96, null);
    assertEquals(96, even.neededOnWornCentreMm());
    assertEquals(96, even.neededOnOriginalCentreMm());
  }

  @Test
  void limitsInTheWrongOrderAreRefused() {
    assertEquals(
        "smallest bore 96.1 mm is above the largest 96.0 mm",
        assertThrows(ImpossibleInput.class, () -> new HoningLimits(96.1, 96.0, null, null, null))
            .getMessage());
    assertThrows(ImpossibleInput.class, () -> new HoningLimits(null, null, null, 0.1, 0.05));
    assertThrows(ImpossibleInput.class, () -> new HoningLimits(null, null, 0.0, null, null));
    assertThrows(ImpossibleInput.class, () -> new HoningLimits(-1.0, null, null, null, null));
    assertThrows(ImpossibleInput.class, () -> new HoningLimits(null, 0.0, null, null, null));
    assertEquals(96.0, new HoningLimits(96.0, 96.0, null, null, null).boreMaxMm());
  }
}
