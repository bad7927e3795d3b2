package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RejectionTest {
  private static final double NOISE_MM = 0.0005;

  private static TiltFit withGlitches(double offMm, int... at) {
    TiltFit even = TiltCase.evenFit(NOISE_MM);
    double[] wild = even.problem().trace().yMm().clone();
    for (int i : at) {
      wild[i] += offMm;
    }
    RockTrace trace = new RockTrace(even.problem().trace().tS(), wild);
    TiltProblem problem = new TiltProblem(trace, even.problem().basis(), even.problem().used());
    return TiltSolver.fit(even, problem, even.prior(), 20);
  }

  private static TiltFit leftOut(TiltFit fit, int... at) {
    boolean[] used = fit.problem().used().clone();
    for (int i : at) {
      used[i] = false;
    }
    return TiltSolver.fit(fit, fit.problem().withUsed(used), fit.prior(), 20);
  }

  @Test
  void glitchesFarApartGoAtOnce() {
    boolean[] used = Rejection.revise(withGlitches(0.05, 40, 100), true);
    for (int i = 0; i < used.length; i++) {
      assertTrue(used[i] == (i != 40 && i != 100), "sample " + i);
    }
  }

  @Test
  void ofNeighboursOnlyTheWorstGoesInOneRound() {
    TiltFit fit = withGlitches(0.05, 40);
    boolean[] used = Rejection.revise(fit, true);
    assertFalse(used[40]);
    assertTrue(Math.abs(fit.deletedResidual(39)) > 4 || Math.abs(fit.deletedResidual(41)) > 4);
    assertTrue(used[39] && used[41]);
  }

  @Test
  void aGlitchAtEitherEndGoesAlone() {
    for (int end : new int[] {0, 149}) {
      TiltFit fit = withGlitches(0.05, end);
      int beside = end == 0 ? 1 : 148;
      assertTrue(Math.abs(fit.deletedResidual(beside)) > 4, "beside " + end);
      boolean[] used = Rejection.revise(fit, true);
      for (int i = 0; i < used.length; i++) {
        assertTrue(used[i] == (i != end), "sample " + i);
      }
    }
  }

  @Test
  void aCleanRecordStaysAsItIs() {
    TiltFit fit = TiltCase.evenFit(NOISE_MM);
    assertArrayEquals(fit.problem().used(), Rejection.revise(fit, true));
  }

  @Test
  void goodSamplesComeBackWhileTheyMay() {
    TiltFit fit = leftOut(TiltCase.evenFit(NOISE_MM), 70, 90);
    assertTrue(Rejection.revise(fit, true)[70]);
    assertTrue(Rejection.revise(fit, true)[90]);
    assertFalse(Rejection.revise(fit, false)[70]);
  }

  @Test
  void aGlitchLeftOutDoesNotComeBack() {
    TiltFit fit = leftOut(withGlitches(0.05, 70), 70);
    assertFalse(Rejection.revise(fit, true)[70]);
  }

  @Test
  void whereTheFitIsVagueNothingComesBack() {
    int[] hole = new int[14];
    for (int k = 0; k < hole.length; k++) {
      hole[k] = 60 + k;
    }
    TiltFit fit = leftOut(TiltCase.evenFit(NOISE_MM), hole);
    boolean[] used = Rejection.revise(fit, true);
    boolean vague = false;
    for (int i : hole) {
      if (fit.predictionVariance(i) >= 100) {
        vague = true;
        assertFalse(used[i], "sample " + i);
      }
    }
    assertTrue(vague);
  }
}
