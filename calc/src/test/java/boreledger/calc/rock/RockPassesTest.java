package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RockPassesTest {
  private static final double TURN_S = Math.PI / TiltCase.RAD_PER_S;

  private static double plainRock(double tS) {
    return 0.6 * Math.sin(TiltCase.RAD_PER_S * (tS - 0.2));
  }

  private static TiltFit plainFit() {
    TiltPrior prior = new TiltPrior(0.01, TiltCase.RAD_PER_S, 0.05);
    RockTrace trace = TiltCase.trace(150, RockPassesTest::plainRock, 0.0001);
    return TiltCase.fit(trace, RockPassesTest::plainRock, prior);
  }

  @Test
  void passesAreWhereTheSineChangesItsSign() {
    RockPasses passes = RockPasses.of(plainFit());
    assertEquals(12, passes.count());
    for (int k = 0; k < passes.count(); k++) {
      assertEquals(0.2 + k * TURN_S, passes.timesS().get(k), 1e-3);
    }
  }

  @Test
  void samplesPerRockAreTheGapsInOneTurn() {
    assertEquals(TURN_S / 0.06, RockPasses.of(plainFit()).samplesPerRock(), 0.8);
  }

  @Test
  void aTouchWithoutALobeOnTheOtherSideIsNoPass() {
    TiltPrior prior = new TiltPrior(0.01, TiltCase.RAD_PER_S, 0.05);
    RockTrace trace = TiltCase.trace(150, t -> 0.31 + 0.3 * Math.sin(4 * t), 0.0001);
    TiltFit fit = TiltCase.fit(trace, t -> 0.31 + 0.3 * Math.sin(4 * t), prior);
    assertEquals(0, RockPasses.of(fit).count());
  }

  @Test
  void stretchesPartAtTheTurns() {
    TiltFit fit = plainFit();
    int[] stretch = RockPasses.of(fit).stretches();
    double[] tS = fit.problem().trace().tS();
    for (int i = 0; i < tS.length; i++) {
      double turns = (tS[i] - 0.2) / TURN_S + 0.5;
      boolean atATurn = Math.abs(turns - Math.rint(turns)) < 0.1;
      int expected = Math.max(0, Math.min(11, (int) Math.floor(turns)));
      assertTrue(atATurn || stretch[i] == expected, "sample " + i + " in " + stretch[i]);
    }
    assertEquals(0, stretch[0]);
    assertEquals(11, stretch[149]);
  }

  @Test
  void rejectedPartCountsBetweenTheFirstAndTheLastPassOnly() {
    TiltFit fit = plainFit();
    boolean[] used = fit.problem().used().clone();
    used[0] = false;
    used[1] = false;
    used[149] = false;
    used[50] = false;
    used[60] = false;
    TiltFit fewer = TiltSolver.fit(fit, fit.problem().withUsed(used), fit.prior(), 5);
    double[] tS = fit.problem().trace().tS();
    int inside = 0;
    for (double t : tS) {
      inside += t > 0.2 && t < 0.2 + 11 * TURN_S ? 1 : 0;
    }
    assertEquals(2.0 / inside, RockPasses.of(fewer).rejectedPart(), 1e-12);
  }

  @Test
  void insideKeepsAPartOfASwingAroundTheOuterPasses() {
    RockTrace longer = TiltCase.trace(400, RockPassesTest::plainRock, 0);
    double[] shifted = longer.tS().clone();
    for (int i = 0; i < shifted.length; i++) {
      shifted[i] -= 5;
    }
    RockTrace inside = RockPasses.of(plainFit()).inside(new RockTrace(shifted, longer.yMm()));
    assertEquals(0.2 - 0.6 * TURN_S, inside.tS()[0], 0.08);
    assertEquals(0.2 + 11.6 * TURN_S, inside.tS()[inside.size() - 1], 0.08);
  }
}
