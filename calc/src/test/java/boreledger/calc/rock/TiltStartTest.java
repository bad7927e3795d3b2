package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TiltStartTest {

  @Test
  void everyRockOfACleanRecordLeansTheRightWay() {
    TiltFit start = TiltStart.likeliest(TiltCase.trace(150, TiltCase::evenRock, 0.0005));
    assertLeansAsRocked(start);
    assertEquals(TiltCase.DIAMETER_MM, start.diameterMm(), 0.0005);
  }

  @Test
  void glitchesBelowTheMinimumAreNotTakenForTheDiameter() {
    TiltFit start = TiltStart.likeliest(withGlitches(-0.2, 10, 47, 93, 121));
    assertLeansAsRocked(start);
    assertEquals(TiltCase.DIAMETER_MM, start.diameterMm(), 0.0005);
    assertTrue(start.problem().usedCount() >= start.problem().trace().size() - 8);
  }

  /** One glitch at each of several vertices may hide which way the gauge went through. */
  @Test
  void glitchesAtTheVerticesAreRepaired() {
    int records = 0;
    for (long seed = 1; seed <= 40; seed++) {
      RockingRecord record = RockingRecord.of(seed, Hand.REACHING, Ends.INSIDE, 10);
      TiltFit start = TiltStart.likeliest(RockTrace.of(record.samples()));
      double misfit = 1 - (double) start.problem().usedCount() / start.problem().trace().size();
      assertTrue(misfit < 0.09, "seed " + seed + ": " + misfit);
      assertEquals(record.truthMm(), start.diameterMm(), 0.003, "seed " + seed);
      records++;
    }
    assertEquals(40, records);
  }

  @Test
  void theStartKnowsHowFastTheGaugeWasRocked() {
    TiltFit start = TiltStart.likeliest(TiltCase.trace(150, TiltCase::evenRock, 0.0005));
    assertEquals(TiltCase.RAD_PER_S, start.prior().rockRadPerS(), 0.5);
  }

  @Test
  void noStiffnessNextToTheStartsIsLikelier() {
    TiltFit start =
        TiltStart.likeliest(TiltCase.trace(200, PriorSearchTest::wanderingRock, 0.0007));
    for (double factor : new double[] {Math.exp(-2), Math.exp(2)}) {
      TiltPrior prior = start.prior().withStiffness(start.prior().stiffness() * factor);
      TiltFit other = TiltSolver.fit(start, start.problem(), prior, 10);
      assertTrue(other.criterion() > start.criterion() - 0.5, "times " + factor);
    }
  }

  /** Without turning the signs back a tenth of the samples of each of these does not fit. */
  @ParameterizedTest
  @ValueSource(longs = {21040, 21786, 22182})
  void signsThatGlitchesTurnedAreTurnedBack(long seed) {
    RockingRecord record = RockFigures.record(10, seed);
    RockEstimate.Found found =
        assertInstanceOf(
            RockEstimate.Found.class, RockEstimator.estimate(record.samples(), 0.001, 4));
    assertEquals(record.truthMm(), found.valueMm(), 3 * found.standardUncertaintyMm());
  }

  @Test
  void aRecordWithoutMinimaHasNoStart() {
    assertNull(TiltStart.likeliest(TiltCase.trace(150, t -> 0.1 + 0.1 * t, 0)));
  }

  @Test
  void transferKeepsTheCurveOnFinerKnots() {
    RockTrace trace = TiltCase.trace(150, TiltCase::evenRock, 0.0002);
    TiltFit coarse = TiltStart.likeliest(trace);
    TiltFit fine = TiltStart.transfer(coarse, trace, 0.05);
    assertNotNull(fine);
    assertEquals(0.05, fine.problem().basis().spacingS());
    assertEquals(Math.pow(2, 7), fine.prior().stiffness() / coarse.prior().stiffness(), 1e-9);
    assertEquals(coarse.prior().rockRadPerS(), fine.prior().rockRadPerS());
    assertEquals(150, fine.problem().usedCount());
    for (int i = 0; i < 150; i++) {
      double expected = coarse.problem().basis().valueAt(trace.tS()[i], coarse.coefficients());
      assertEquals(expected, fine.root(i), 0.003);
    }
  }

  @Test
  void transferLeavesOutWhatLiesFarFromTheCurve() {
    RockTrace wild = withGlitches(0.011, 31);
    TiltFit coarse = TiltStart.likeliest(TiltCase.trace(150, TiltCase::evenRock, 0.0002));
    TiltFit fine = TiltStart.transfer(coarse, wild, 0.07);
    for (int i = 0; i < 150; i++) {
      assertEquals(i != 31, fine.problem().used()[i], "sample " + i);
    }
    TiltFit near = TiltStart.transfer(coarse, withGlitches(0.009, 31), 0.07);
    assertEquals(150, near.problem().usedCount());
  }

  private static RockTrace withGlitches(double offMm, int... at) {
    RockTrace trace = TiltCase.trace(150, TiltCase::evenRock, 0.0002);
    double[] wild = trace.yMm().clone();
    for (int i : at) {
      wild[i] += offMm;
    }
    return new RockTrace(trace.tS(), wild);
  }

  private static void assertLeansAsRocked(TiltFit start) {
    double[] tS = start.problem().trace().tS();
    double same = Math.signum(start.root(0) * TiltCase.evenRock(tS[0]));
    for (int i = 0; i < tS.length; i++) {
      if (start.problem().used()[i]) {
        assertEquals(TiltCase.evenRock(tS[i]), same * start.root(i), 0.03, "at " + tS[i] + " s");
      }
    }
  }
}
