package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PriorSearchTest {

  static double wanderingRock(double tS) {
    return (0.6 + 0.1 * Math.sin(0.9 * tS)) * Math.sin(4 * tS + 0.5 * Math.sin(1.1 * tS)) + 0.05;
  }

  private static TiltFit start(TiltPrior prior) {
    RockTrace trace = TiltCase.trace(200, PriorSearchTest::wanderingRock, 0.0007);
    return TiltCase.fit(trace, PriorSearchTest::wanderingRock, prior);
  }

  @Test
  void noNeighbouringPriorIsClearlyLikelier() {
    TiltFit best = PriorSearch.around(start(new TiltPrior(1, 2, 0.5)), 1);
    TiltPrior prior = best.prior();
    for (int sign = -1; sign <= 1; sign += 2) {
      double little = Math.exp(0.2 * sign);
      TiltPrior[] neighbours = {
        prior.withStiffness(prior.stiffness() * Math.exp(0.25 * sign)),
        new TiltPrior(
            prior.stiffness(), prior.rockRadPerS() * Math.exp(0.025 * sign), prior.jitterSPerMm()),
        new TiltPrior(prior.stiffness(), prior.rockRadPerS(), prior.jitterSPerMm() * little)
      };
      for (TiltPrior neighbour : neighbours) {
        TiltFit other = TiltSolver.fit(best, best.problem(), neighbour, 10);
        assertTrue(other.criterion() > best.criterion() - 0.3, neighbour.toString());
      }
    }
  }

  @Test
  void farStartsLeadToTheSameDiameter() {
    TiltFit soft = PriorSearch.around(start(new TiltPrior(1e-3, 3, 0.1)), 1);
    TiltFit stiff = PriorSearch.around(start(new TiltPrior(3, 5, 0.5)), 1);
    assertEquals(soft.criterion(), stiff.criterion(), 1.5);
    assertEquals(soft.diameterMm(), stiff.diameterMm(), 0.0001);
  }

  @Test
  void aloneTheStiffnessGoesBothWays() {
    for (double stiffness : new double[] {1e-7, 1e3}) {
      TiltFit from = start(new TiltPrior(stiffness, 4, 0.05));
      TiltFit best = PriorSearch.alongStiffness(from, 2);
      assertEquals(4, best.prior().rockRadPerS(), 1e-12);
      assertEquals(0.05, best.prior().jitterSPerMm(), 1e-12);
      assertTrue(best.criterion() < from.criterion() - 10);
      for (double factor : new double[] {Math.exp(-2), Math.exp(2)}) {
        TiltPrior prior = best.prior().withStiffness(best.prior().stiffness() * factor);
        TiltFit other = TiltSolver.fit(best, best.problem(), prior, 10);
        assertTrue(other.criterion() > best.criterion() - 0.1);
      }
    }
  }

  /** The truth is shown by a jitter put into the times: it must be found to within a factor two. */
  @Test
  void jitterOfTheTimesIsSeen() {
    RockTrace trace = TiltCase.trace(200, TiltCase::evenRock, 0.0007);
    double[] late = trace.tS().clone();
    for (int i = 0; i < late.length; i++) {
      late[i] += 0.002 * Math.sqrt(2) * Math.sin(2.3 * i * i);
    }
    TiltFit from =
        TiltCase.fit(
            new RockTrace(late, trace.yMm()), TiltCase::evenRock, new TiltPrior(0.1, 4, 0.1));
    TiltFit best = PriorSearch.around(from, 1);
    double jitterS = best.prior().jitterSPerMm() * Math.sqrt(best.noiseVariance());
    assertTrue(jitterS > 0.001 && jitterS < 0.004, "jitter " + jitterS + " s");
  }
}
