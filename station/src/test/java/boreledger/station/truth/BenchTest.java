package boreledger.station.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class BenchTest {
  private static final BigDecimal NONE = BigDecimal.ZERO;

  /**
   * 100 mm warmed by 5 K: steel of 11.5e-6/K grows by 5.75 µm, aluminium of 23.1e-6/K by 11.55 µm.
   * Coefficients: Swyt, J. Res. NIST 99 (1994) 31; products by hand.
   */
  @Test
  void growthFollowsTheHandbookCoefficients() {
    assertEquals(
        0.00575,
        Bench.growth(new BigDecimal("11.5e-6"), BigDecimal.valueOf(25)).doubleValue() * 100 - 100,
        1e-9);
    assertEquals(
        0.01155,
        Bench.growth(new BigDecimal("23.1e-6"), BigDecimal.valueOf(25)).doubleValue() * 100 - 100,
        1e-9);
  }

  @Test
  void anEqualReadingInABoreOfTheRingsMetalAndWarmthMeansTheRingsSize() {
    BigDecimal cte = new BigDecimal("11.5e-6");
    BigDecimal tempC = new BigDecimal("31.7");
    Bench bench = new Bench(new BigDecimal("96.002"), cte, tempC, cte, tempC);
    BigDecimal shown = new BigDecimal("0.0123");
    assertEquals(0, bench.diameterAt20Mm(shown, shown).compareTo(new BigDecimal("96.002")));
  }

  /** A 100 mm steel ring at 25 °C is 5.75 µm larger; an aluminium bore there 11.55 µm (above). */
  @Test
  void anEqualReadingInAWarmAluminiumBoreMeansASmallerBore() {
    Bench bench =
        new Bench(
            BigDecimal.valueOf(100),
            new BigDecimal("11.5e-6"),
            BigDecimal.valueOf(25),
            new BigDecimal("23.1e-6"),
            BigDecimal.valueOf(25));
    assertEquals(
        100 - 0.0058, bench.diameterAt20Mm(NONE, NONE).doubleValue(), 1e-6, "to a nanometre");
  }

  @Test
  void aModelledReadingLeadsBackToTheDiameter() {
    Bench bench = PumphouseThree.engine().bench();
    double shown = bench.deviationMm(96.0123456, 0.0017);
    BigDecimal back = bench.diameterAt20Mm(BigDecimal.valueOf(shown), BigDecimal.valueOf(0.0017));
    assertEquals(96.0123456, back.doubleValue(), 1e-11);
  }

  @Test
  void theZeroRunsStraightBetweenTheChecks() {
    Zero zero = new Zero(number("10"), number("0.001"), number("110"), number("0.003"));
    assertEquals(0, zero.atMm(number("35")).compareTo(number("0.0015")));
  }

  @Test
  void withoutAClosingCheckTheOpeningZeroHolds() {
    Zero zero = new Zero(number("10"), number("0.001"), null, null);
    assertEquals(number("0.001"), zero.atMm(number("900")));
  }

  @Test
  void aSessionWithoutNoiseGivesBackTheTrueBores() {
    Engine engine = PumphouseThree.engine();
    Drift drift = new Drift(-0.002, 0.004, 300);
    PressSession session = PressSession.gauge(engine, drift, 0, Wire.signedMm(9), new Noise(1));
    List<BoreReading> readings = session.presses().stream().map(p -> p.reading()).toList();
    BoreTruth truth = BoreTruth.ofReadings(engine.bench(), readings);
    assertEquals(18, truth.diametersMm().size());
    truth
        .diametersMm()
        .forEach(
            (place, mm) ->
                assertEquals(
                    engine.trueDiameterMm(place), mm.doubleValue(), 4e-9, place::toString));
  }

  private static BigDecimal number(String digits) {
    return new BigDecimal(digits);
  }
}
