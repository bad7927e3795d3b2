package boreledger.calc.filing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.reference.Seeds;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import boreledger.calc.uncertainty.Estimate;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.junit.jupiter.api.Test;

class FilingTest {
  private static final double U_MM = 0.002;
  private static final FilingGoal GOAL = FilingGoal.of(0.5, 0.6);
  private static final List<FilingPass> ONE = RemovalRateTest.passes(0.25, 4, 0.025);
  private static final List<FilingPass> THREE =
      RemovalRateTest.passes(0.25, 4, 0.020, 5, 0.026, 6, 0.029);

  private static FilingAdvice next(double gapMm, List<FilingPass> passes) {
    return next(gapMm, passes, GOAL);
  }

  private static FilingAdvice next(double gapMm, List<FilingPass> passes, FilingGoal goal) {
    Estimate gap = new Estimate(gapMm, Budget.of(Component.typeB("reading", U_MM)));
    return new Filing(gap, U_MM, passes, goal).next();
  }

  @Test
  void gapAboveTheLargestIsTooWide() {
    assertEquals(new FilingAdvice.TooWide(0.61, 0.6), next(0.61, ONE));
  }

  @Test
  void gapAtTheLargestIsNotTooWide() {
    assertInstanceOf(FilingAdvice.Ready.class, next(0.6, ONE));
  }

  @Test
  void remainderEqualToTheUncertaintyIsReady() {
    Estimate gap = new Estimate(0, Budget.of(Component.typeB("reading", U_MM)));
    FilingGoal goal = FilingGoal.of(gap.expandedUncertaintyMm(), null);
    assertInstanceOf(FilingAdvice.Ready.class, new Filing(gap, U_MM, List.of(), goal).next());
  }

  @Test
  void remainderWithinTheUncertaintyIsReady() {
    // U is 1.96 x 0.002 mm.
    FilingAdvice.Ready ready = assertInstanceOf(FilingAdvice.Ready.class, next(0.4961, THREE));
    assertEquals(0.0039, ready.remainderMm(), 1e-12);
    assertEquals(0.00392, ready.expandedUncertaintyMm(), 1e-6);
    assertInstanceOf(FilingAdvice.Ready.class, next(0.55, List.of()));
    assertInstanceOf(FilingAdvice.HalfTheRemainder.class, next(0.4960 - 0.01, ONE.subList(0, 1)));
  }

  @Test
  void withoutPassesFileALittleAndMeasure() {
    assertEquals(new FilingAdvice.FileALittleAndMeasure(0.25), next(0.25, List.of()));
  }

  @Test
  void oneOrTwoPassesAllowHalfTheRemainder() {
    // 0.025 in 4 turns is 0.00625 a turn; half of 0.225 is 0.1125, which is 18 turns.
    FilingAdvice.HalfTheRemainder half =
        assertInstanceOf(FilingAdvice.HalfTheRemainder.class, next(0.27499, ONE));
    assertEquals(18, half.turns());
    assertEquals(0.38749, half.expectedGapMm(), 1e-12);
    // 0.020 + 0.026 in 9 turns; half of 0.204 is 19.96 turns.
    FilingAdvice.HalfTheRemainder two =
        assertInstanceOf(FilingAdvice.HalfTheRemainder.class, next(0.296, THREE.subList(0, 2)));
    assertEquals(19, two.turns());
  }

  @Test
  void turnThatTakesMoreThanHalfTheRemainderIsTooMuch() {
    FilingAdvice.OneTurnTooMuch much =
        assertInstanceOf(FilingAdvice.OneTurnTooMuch.class, next(0.49, ONE));
    assertEquals(0.00625, much.removalPerTurnMm(), 1e-12);
    assertEquals(null, much.chanceOfPassing());
  }

  @Test
  void passesThatRemovedNothingAreTold() {
    List<FilingPass> none = RemovalRateTest.passes(0.25, 4, 0.0, 5, -0.001, 3, 0.0);
    assertInstanceOf(FilingAdvice.NothingRemoved.class, next(0.249, none));
    assertInstanceOf(FilingAdvice.NothingRemoved.class, next(0.25, none.subList(0, 1)));
    List<FilingPass> exactlyNone = RemovalRateTest.passes(0.25, 4, 0.0, 5, 0.0, 3, 0.0);
    assertInstanceOf(FilingAdvice.NothingRemoved.class, next(0.25, exactlyNone));
  }

  @Test
  void rateKnownAlmostExactlyIsFiledUpToTheLimit() {
    // 0.22 mm are left to the limit, which is 10.9 turns of 0.0201 mm.
    RemovalRate rate = new RemovalRate(0.0201, 1e-9, 1e-9, 0, 2);
    assertEquals(10, new Overshoot(0.3, 1e-6, 1e-6, rate, 0.52).mostTurns(0.01));
  }

  @Test
  void chanceOfTheMostTurnsIsBelowTheBoundAndNotAtIt() {
    RemovalRate rate = new RemovalRate(0.005, 0.0005, 0.0008, 0.1, 2);
    Overshoot overshoot = new Overshoot(0.3, U_MM, U_MM, rate, 0.52);
    assertEquals(11, overshoot.mostTurns(overshoot.chance(12)));
  }

  @Test
  void oneMoreTurnWouldReachOnePercent() {
    int[] advised = new int[1];
    Seeds.each(
        random -> {
          double gapMm = Seeds.between(random, 0.3, 0.49);
          if (next(gapMm, THREE) instanceof FilingAdvice.NextPass pass) {
            advised[0]++;
            assertEquals(chance(gapMm, pass.turns(), pass.rate()), pass.chanceOfPassing(), 1e-9);
            assertTrue(chance(gapMm, pass.turns(), pass.rate()) < 0.01);
            assertTrue(chance(gapMm, pass.turns() + 1, pass.rate()) >= 0.01);
          }
        });
    assertTrue(advised[0] > 900, advised[0] + " advised");
  }

  /**
   * By the t distribution of Commons Math 3.6.1, with the error of the gap to come written as a sum
   * over the independent errors: the last reading is in the gap once and in the rate by its share.
   */
  private static double chance(double gapMm, int turns, RemovalRate rate) {
    double share = turns * rate.lastReadingShare() * U_MM;
    double rateMm2 = Math.pow(turns * rate.standardUncertaintyMm(), 2) - share * share;
    double strayMm2 = Math.pow(turns * rate.passToPassMm(), 2);
    double sd = Math.sqrt(Math.pow(U_MM + share, 2) + rateMm2 + strayMm2);
    double spare = 0.52 - gapMm - turns * rate.perTurnMm();
    return 1 - new TDistribution(2).cumulativeProbability(spare / sd);
  }

  @Test
  void largestGapCutsTheToleranceShort() {
    assertEquals(0.52, FilingGoal.of(0.5, null).limitMm(), 1e-15);
    assertEquals(0.51, FilingGoal.of(0.5, 0.51).limitMm());
    FilingAdvice.NextPass wide = (FilingAdvice.NextPass) next(0.3, THREE, FilingGoal.of(0.5, null));
    FilingAdvice.NextPass cut = (FilingAdvice.NextPass) next(0.3, THREE, FilingGoal.of(0.5, 0.5));
    assertTrue(cut.turns() < wide.turns(), cut.turns() + " and " + wide.turns());
  }

  @Test
  void singleTurnThatIsTooRiskyIsTold() {
    List<FilingPass> wild = RemovalRateTest.passes(0.25, 4, 0.005, 5, 0.08, 6, 0.03);
    FilingAdvice.OneTurnTooMuch much =
        assertInstanceOf(FilingAdvice.OneTurnTooMuch.class, next(0.48, wild));
    assertTrue(much.chanceOfPassing() >= 0.01);
  }

  @Test
  void impossibleInputIsRefused() {
    assertEquals(
        "0 turns in a filing pass, at least 1 needed", message(() -> new FilingPass(0, 0.3, 0.3)));
    assertEquals(
        "gap after filing -0.3 mm is negative", message(() -> new FilingPass(1, 0.3, -0.3)));
    assertEquals(
        "largest gap 0.4 mm is below the target gap 0.5 mm",
        message(() -> FilingGoal.of(0.5, 0.4)));
    Estimate gap = new Estimate(0.3, Budget.of(Component.typeB("reading", U_MM)));
    assertEquals(
        "standard uncertainty of a gap 0.0 mm is not above zero",
        message(() -> new Filing(gap, 0, List.of(), GOAL)));
  }

  private static String message(org.junit.jupiter.api.function.Executable bad) {
    return assertThrows(ImpossibleInput.class, bad).getMessage();
  }
}
