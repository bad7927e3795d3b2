package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class PriorSpreadTest {

  /**
   * A short record leaves the stiffness open. The average written out: stiffnesses e⁻² to e² times
   * the likeliest, by their likelihoods.
   */
  @Test
  void varianceIsTheAverageOverTheStiffnesses() {
    RockTrace trace = TiltCase.trace(40, PriorSearchTest::wanderingRock, 0.01);
    TiltPrior first = new TiltPrior(1, 4, 0.05);
    TiltFit fit = PriorSearch.around(TiltCase.fit(trace, PriorSearchTest::wanderingRock, first), 1);
    double weights = 0;
    double sum = 0;
    for (double power : new double[] {-2, -1, 0, 1, 2}) {
      TiltPrior prior = fit.prior().withStiffness(fit.prior().stiffness() * Math.exp(power));
      TiltFit other = TiltSolver.fit(fit, fit.problem(), prior, 30);
      double weight = Math.exp(-other.criterion() / 2 + fit.criterion() / 2);
      double offMm = other.diameterMm() - fit.diameterMm();
      sum += weight * (other.noiseVariance() * other.diameterVarianceShare() + offMm * offMm);
      weights += weight;
    }
    assertEquals(sum / weights, PriorSpread.variance(fit, 0), 1e-3 * sum / weights);
  }

  @Test
  void noiseIsNeverTakenBelowTheLeast() {
    TiltFit fit = TiltCase.evenFit(0.00001);
    double least = 1e-6;
    double own = least * fit.diameterVarianceShare();
    assertEquals(own, PriorSpread.variance(fit, least), 0.3 * own);
  }
}
