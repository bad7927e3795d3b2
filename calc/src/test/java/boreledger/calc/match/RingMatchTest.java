package boreledger.calc.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.input.ImpossibleInput;
import java.util.List;
import org.junit.jupiter.api.Test;

class RingMatchTest {
  private static final BoreToFill ONE = new BoreToFill("1", 300.5, 0.4, 0.6);
  private static final BoreToFill TWO = new BoreToFill("2", 300.6, 0.4, 0.6);
  private static final RingToPlace LONG = new RingToPlace("long", 300.2);
  private static final RingToPlace MIDDLE = new RingToPlace("middle", 300.1);
  private static final RingToPlace SHORT = new RingToPlace("short", 299.8);

  @Test
  void lengthIsPerimeterLessGapToTheLastDecimal() {
    assertEquals(300.8, RingToPlace.gapped("a", 0.3, 301.1).lengthMm(), 0);
    assertEquals(0.3, Placing.of(new RingToPlace("a", 300.8), bore(301.1)).gapMm(), 0);
  }

  private static BoreToFill bore(double perimeterMm) {
    return new BoreToFill("b", perimeterMm, 0.4, null);
  }

  @Test
  void ringsAreExchangedWhenThatSavesFiling() {
    // As listed: gaps 0.4 and 0.4, nothing to file; turned round: 0.3 and 0.5, so 0.1 to file.
    RingMatch match = RingMatch.of(List.of(LONG, MIDDLE), List.of(ONE, TWO));
    assertEquals(
        List.of("middle in 1", "long in 2"),
        match.placings().stream().map(p -> p.ring().name() + " in " + p.bore().name()).toList());
    assertEquals(0, match.totalRemoveMm());
    assertEquals(0.1, match.asListed().totalRemoveMm(), 0);
    assertEquals(0.1, match.savedMm(), 0);
  }

  @Test
  void savingIsWhatTheListedOrderNeedsBeyondTheBest() {
    // As listed gaps of 0.3 and 0.5, 0.15 below the target and above it; crossed 0.4 and 0.4.
    BoreToFill first = new BoreToFill("1", 300.5, 0.45, null);
    BoreToFill second = new BoreToFill("2", 300.6, 0.45, null);
    RingMatch match = RingMatch.of(List.of(LONG, MIDDLE), List.of(first, second));
    assertEquals(0.15, match.asListed().totalRemoveMm(), 0);
    assertEquals(0.1, match.totalRemoveMm(), 0);
    assertEquals(0.05, match.savedMm(), 0);
  }

  @Test
  void placingTellsWhatIsToBeFiledOffAndNothingWhereTheGapIsWideEnough() {
    assertEquals(0.1, Placing.of(LONG, ONE).removeMm(), 0);
    assertEquals(0, Placing.of(LONG, TWO).removeMm(), 0);
    assertEquals(0, Placing.of(MIDDLE, TWO).removeMm(), 0);
  }

  @Test
  void closestBoreIsTheOneWhoseLargestGapIsPassedByTheLeast() {
    // Gaps 0.7 and 0.75: 0.1 above the one largest and 0.05 above the other.
    BoreToFill looser = new BoreToFill("looser", 300.55, 0.4, 0.7);
    RingMatch match = RingMatch.of(List.of(SHORT), List.of(ONE, looser));
    SpareRing.FitsNowhere spare = (SpareRing.FitsNowhere) match.spareRings().get(0);
    assertEquals(looser, spare.closest().bore());
  }

  @Test
  void identicalRingsStayAsListed() {
    RingToPlace twin = new RingToPlace("twin", MIDDLE.lengthMm());
    BoreToFill same = new BoreToFill("3", ONE.perimeterMm(), 0.4, 0.6);
    RingMatch match = RingMatch.of(List.of(MIDDLE, twin), List.of(ONE, same));
    assertEquals(MIDDLE, match.placings().get(0).ring());
    assertEquals(twin, match.placings().get(1).ring());
    assertEquals(0, match.savedMm());
  }

  @Test
  void ringThatIsTooShortEverywhereFitsNowhere() {
    RingMatch match = RingMatch.of(List.of(SHORT, MIDDLE), List.of(ONE, TWO));
    SpareRing.FitsNowhere spare = (SpareRing.FitsNowhere) match.spareRings().get(0);
    assertEquals(SHORT, spare.ring());
    assertEquals(ONE, spare.closest().bore());
    assertEquals(0.7, spare.closest().gapMm(), 0);
    assertEquals(
        new EmptyBore.RingsNeededElsewhere(TWO, List.of(MIDDLE)), match.emptyBores().get(0));
  }

  @Test
  void boreThatIsTooWideForEveryRingGoesWithout() {
    BoreToFill wide = new BoreToFill("wide", 301.5, 0.4, 0.6);
    RingMatch match = RingMatch.of(List.of(MIDDLE, LONG), List.of(wide, ONE));
    assertEquals(
        new EmptyBore.EveryRingTooShort(wide, Placing.of(LONG, wide)), match.emptyBores().get(0));
    assertEquals(List.of(new SpareRing.NotNeeded(LONG, List.of(ONE))), match.spareRings());
  }

  @Test
  void placingsAsListedThatAreNotAllowedAreToldAndNotCompared() {
    RingMatch match = RingMatch.of(List.of(SHORT, MIDDLE, LONG), List.of(ONE, TWO));
    assertEquals(List.of(Placing.of(SHORT, ONE)), match.asListed().notAllowed());
    assertEquals(2, match.placings().size());
    assertNull(match.savedMm());
  }

  @Test
  void fillingMoreBoresStandsAboveFilingLess() {
    BoreToFill tight = new BoreToFill("tight", 300.0, 0.4, 0.6);
    RingToPlace onlyTight = new RingToPlace("only in tight", 299.6);
    RingMatch match = RingMatch.of(List.of(LONG, onlyTight), List.of(ONE, tight));
    assertEquals(2, match.placings().size());
    RingMatch forced = RingMatch.of(List.of(onlyTight, LONG), List.of(tight, ONE));
    assertEquals(0.1, forced.totalRemoveMm(), 0);
    assertTrue(forced.emptyBores().isEmpty());
  }

  @Test
  void gapAtTheLargestIsAllowedAndAPicometreMoreIsNot() {
    assertTrue(Placing.of(new RingToPlace("at", 299.9), ONE).allowed());
    assertEquals(false, Placing.of(new RingToPlace("above", 299.899999999), ONE).allowed());
  }

  @Test
  void lengthOfAKilometreIsTheLongest() {
    assertEquals(1e6, bore(1e6).perimeterMm());
  }

  @Test
  void impossibleInputIsRefused() {
    assertEquals(
        "0 rings given, at least 1 needed", message(() -> RingMatch.of(List.of(), List.of(ONE))));
    assertEquals(
        "0 bores given, at least 1 needed", message(() -> RingMatch.of(List.of(LONG), List.of())));
    assertEquals(
        "two rings are named long",
        message(() -> RingMatch.of(List.of(LONG, MIDDLE, LONG), List.of(ONE))));
    assertEquals(
        "two bores are named 1",
        message(() -> RingMatch.of(List.of(LONG), List.of(ONE, TWO, ONE))));
    assertEquals(
        "largest gap of bore 1 0.3 mm is below its target 0.4 mm",
        message(() -> new BoreToFill("1", 300, 0.4, 0.3)));
    assertEquals(
        "length of ring a -0.5 mm is not above zero",
        message(() -> RingToPlace.gapped("a", 1.5, 1)));
    assertEquals(
        "perimeter of bore b 2000000.0 mm is above 1000000.0 mm", message(() -> bore(2e6)));
  }

  private static String message(org.junit.jupiter.api.function.Executable bad) {
    return assertThrows(ImpossibleInput.class, bad).getMessage();
  }
}
