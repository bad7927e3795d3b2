package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class RockEndsTest {
  private static final double TURN_S = Math.PI / TiltCase.RAD_PER_S;

  private static TiltFit offBetween(double fromS, double toS, double offMm) {
    TiltFit even = TiltCase.evenFit(0.0003);
    double[] tS = even.problem().trace().tS();
    double[] yMm = even.problem().trace().yMm().clone();
    for (int i = 0; i < tS.length; i++) {
      yMm[i] += tS[i] >= fromS && tS[i] < toS ? offMm : 0;
    }
    TiltProblem problem =
        new TiltProblem(new RockTrace(tS, yMm), even.problem().basis(), even.problem().used());
    TiltPrior stiff = even.prior().withStiffness(1);
    return TiltSolver.fit(problem, stiff, even.coefficients(), even.diameterMm(), 20);
  }

  private static RockTrace trimmed(TiltFit fit) {
    return RockEnds.without(RockPasses.of(fit), 3);
  }

  @Test
  void goodEndsStay() {
    TiltFit fit = TiltCase.evenFit(0.0003);
    assertEquals(150, trimmed(fit).size());
  }

  @Test
  void aFirstPassOfItsOwnLevelIsLeftOff() {
    RockTrace rest = trimmed(offBetween(0, 0.2 + TURN_S / 2, 0.02));
    assertEquals(0.2 + TURN_S / 2, rest.tS()[0], 0.15);
    assertTrue(rest.tS()[rest.size() - 1] > 8.9);
  }

  @Test
  void aLastPassOfItsOwnLevelIsLeftOff() {
    RockTrace rest = trimmed(offBetween(0.2 + 9.5 * TURN_S, 99, 0.02));
    assertEquals(0.2 + 9.5 * TURN_S, rest.tS()[rest.size() - 1], 0.15);
    assertEquals(0, rest.tS()[0], 0.02);
  }

  @Test
  void aPassInTheMiddleIsNoEnd() {
    assertEquals(150, trimmed(offBetween(0.2 + 4.5 * TURN_S, 0.2 + 5.5 * TURN_S, 0.02)).size());
  }

  @Test
  void anEndWithManyRejectedSamplesIsLeftOff() {
    TiltFit even = TiltCase.evenFit(0.0003);
    boolean[] used = even.problem().used().clone();
    used[2] = false;
    used[4] = false;
    used[6] = false;
    TiltFit fit = TiltSolver.fit(even, even.problem().withUsed(used), even.prior(), 20);
    assertEquals(0.2 + TURN_S / 2, trimmed(fit).tS()[0], 0.15);
  }

  @Test
  void anEndWithAQuarterOfItsSamplesRejectedStays() {
    TiltFit even = TiltCase.evenFit(0.0003);
    boolean[] used = even.problem().used().clone();
    used[148] = false;
    used[146] = false;
    TiltFit fit = TiltSolver.fit(even, even.problem().withUsed(used), even.prior(), 20);
    int[] stretch = RockPasses.of(fit).stretches();
    assertEquals(8, Arrays.stream(stretch).filter(k -> k == stretch[149]).count());
    assertEquals(150, trimmed(fit).size());
  }

  @Test
  void asManyPassesAsAskedForAreEnoughToLeaveOneOff() {
    RockPasses passes = RockPasses.of(offBetween(0, 0.2 + TURN_S / 2, 0.02));
    assertTrue(RockEnds.without(passes, passes.count()).size() < 150);
  }

  @Test
  void tooFewPassesAreLeftAsTheyAre() {
    TiltFit fit = offBetween(0, 0.2 + TURN_S / 2, 0.02);
    assertEquals(150, RockEnds.without(RockPasses.of(fit), 30).size());
  }
}
