package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RockEstimatorTest {
  private static final double STEP_MM = 0.001;
  private static final double ROCKING_RAD_PER_S = 4;

  @Test
  void noSamplesAreNotEnough() {
    assertEquals(
        new RockEstimate.NotEnough(0, "0 rocks seen, 4 needed"),
        RockEstimator.estimate(List.of(), STEP_MM, 4));
  }

  @Test
  void oneSampleIsNotEnough() {
    assertNotEnough(List.of(new RockSample(0, 0.5)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {5, 10, 50})
  void valuesWithoutRockingAreNotEnough(double rate) {
    Random noise = new Random(5);
    assertAll(
        () -> assertNotEnough(record(rate, t -> 0.5)),
        () -> assertNotEnough(record(rate, t -> 0)),
        () -> assertNotEnough(record(rate, t -> 0.5 + 0.0007 * noise.nextGaussian())),
        () -> assertNotEnough(record(rate, t -> 0.5 + 0.02 * noise.nextGaussian())),
        () -> assertNotEnough(record(rate, t -> 0.01 * t)),
        () -> assertNotEnough(record(rate, t -> -0.1 * t)),
        () -> assertNotEnough(record(rate, t -> 0.01 * (t - 6) * (t - 6))),
        () -> assertNotEnough(record(rate, t -> t * 1.3 % 1 > 0.5 ? 0.3 : 0)),
        () -> assertNotEnough(record(rate, t -> 0.6 * noise.nextDouble() - 0.3)),
        () -> assertNotEnough(record(rate, t -> 1e300 * noise.nextGaussian())),
        () -> assertNotEnough(record(rate, t -> Double.NaN)),
        () -> assertNotEnough(record(rate, t -> Double.POSITIVE_INFINITY)));
  }

  @Test
  void samplesOfOneTimeAreNotEnough() {
    List<RockSample> samples =
        record(10, RockEstimatorTest::rocked).stream()
            .map(s -> new RockSample(3, s.valueMm()))
            .toList();
    assertNotEnough(samples);
  }

  @Test
  void aSampleThatRunsBackInTimeIsPassedOver() {
    List<RockSample> samples = new ArrayList<>(record(10, RockEstimatorTest::rocked));
    samples.add(60, new RockSample(1, -5));
    samples.add(30, new RockSample(Double.NaN, 0));
    assertEquals(0, found(samples).valueMm(), 0.0002);
  }

  @Test
  void fewerRocksThanAskedForAreNotEnough() {
    List<RockSample> samples =
        record(10, RockEstimatorTest::rocked).stream().filter(s -> s.tS() < 3.8).toList();
    RockEstimate.NotEnough few =
        assertInstanceOf(RockEstimate.NotEnough.class, RockEstimator.estimate(samples, STEP_MM, 6));
    assertEquals(new RockEstimate.NotEnough(5, "5 rocks seen, 6 needed"), few);
  }

  @Test
  void threeRocksAreAskedForEvenWhenNoneIs() {
    List<RockSample> samples =
        record(10, RockEstimatorTest::rocked).stream().filter(s -> s.tS() < 1.6).toList();
    RockEstimate.NotEnough few =
        assertInstanceOf(RockEstimate.NotEnough.class, RockEstimator.estimate(samples, STEP_MM, 0));
    assertTrue(few.why().endsWith(" rocks seen, 3 needed"), few.why());
  }

  @Test
  void askingForAllTheRocksThereAreChangesNothing() {
    List<RockSample> samples = record(10, RockEstimatorTest::rocked);
    assertEquals(found(samples), RockEstimator.estimate(samples, STEP_MM, 15));
    assertEquals(
        new RockEstimate.NotEnough(15, "15 rocks seen, 16 needed"),
        RockEstimator.estimate(samples, STEP_MM, 16));
  }

  @Test
  void noiseThatLeavesTheValueVagueIsToldAndGivesNone() {
    int vague = 0;
    for (long seed = 1; seed <= 4; seed++) {
      Random noise = new Random(seed);
      List<RockSample> samples = record(8, t -> rocked(t) + 0.02 * noise.nextGaussian());
      RockEstimate.NotEnough none =
          assertInstanceOf(
              RockEstimate.NotEnough.class,
              RockEstimator.estimate(samples, STEP_MM, 4),
              "seed " + seed);
      String told = "uncertain by 0\\.00[2-9]\\d mm: rock slower and more evenly";
      vague += none.why().matches(told) ? 1 : 0;
    }
    assertTrue(vague >= 2, vague + " told as vague");
  }

  @Test
  void fewSamplesPerRockAreNotEnough() {
    RockEstimate.NotEnough few =
        assertInstanceOf(
            RockEstimate.NotEnough.class,
            RockEstimator.estimate(record(5, RockEstimatorTest::rocked), STEP_MM, 4));
    assertEquals("3.9 samples per rock, 4 needed: rock slower", few.why());
  }

  @Test
  void aTriangularWaveDoesNotFitARockedGauge() {
    RockEstimate.NotEnough none =
        assertInstanceOf(
            RockEstimate.NotEnough.class,
            RockEstimator.estimate(record(50, t -> 0.3 * Math.abs(2 * t % 2 - 1)), STEP_MM, 4));
    assertTrue(
        none.why().matches("[1-9]\\d % of the samples do not fit a rocked gauge: rock again"),
        none.why());
  }

  /** A pure sine passes through square every π/4 s, from 0.2 s on. */
  @Test
  void vertexTimesAreThoseOfThePasses() {
    RockEstimate.Found found = found(record(50, RockEstimatorTest::rocked));
    assertEquals(15, found.rocks());
    assertEquals(15, found.vertices().size());
    for (int k = 0; k < 15; k++) {
      assertEquals(0.2 + k * Math.PI / ROCKING_RAD_PER_S, found.vertices().get(k).tS(), 0.0005);
      assertEquals(0, found.vertices().get(k).valueMm(), 0.0008);
    }
    double middleS = 0.2 + 7 * Math.PI / ROCKING_RAD_PER_S;
    assertEquals(middleS, found.tS(), 0.3);
    assertEquals(0, found.rejected());
  }

  @Test
  void valueMovesWithTheZeroAndTimeWithTheClock() {
    RockingRecord plain = RockingRecord.of(11, Hand.WANDERING, Ends.INSIDE, 20);
    List<RockSample> moved =
        plain.samples().stream().map(s -> new RockSample(s.tS() + 64, s.valueMm() + 96)).toList();
    RockEstimate.Found one = found(plain.samples());
    RockEstimate.Found other = found(moved);
    assertEquals(one.valueMm() + 96, other.valueMm(), 1e-6);
    assertEquals(one.tS() + 64, other.tS(), 1e-3);
    assertEquals(one.standardUncertaintyMm(), other.standardUncertaintyMm(), 1e-6);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.2, 0.4, 0.06, -1.0})
  void aSteadyValueAtTheEndsChangesNothing(double steadyMm) {
    RockingRecord plain = RockingRecord.of(12, Hand.RESTING, Ends.INSIDE, 20);
    List<RockSample> samples = new ArrayList<>(steady(-6, steadyMm));
    samples.addAll(plain.samples());
    samples.addAll(steady(12.1, steadyMm));
    assertEquals(found(plain.samples()).valueMm(), found(samples).valueMm(), 1e-7);
  }

  @Test
  void rocksThatDriftApartWidenTheUncertainty() {
    RockEstimate.Found steady = found(record(50, RockEstimatorTest::rocked));
    RockEstimate.Found drifting = found(record(50, t -> rocked(t) + 0.001 * t));
    assertTrue(drifting.standardUncertaintyMm() > 4 * steady.standardUncertaintyMm());
    assertEquals(0.006, drifting.valueMm(), 0.002);
  }

  @Test
  void roundingWithoutNoiseToBlurItStaysInTheUncertainty() {
    double stepMm = 0.01;
    List<RockSample> coarse =
        record(50, RockEstimatorTest::rocked).stream()
            .map(s -> new RockSample(s.tS(), Math.rint(s.valueMm() / stepMm) * stepMm))
            .toList();
    RockEstimate.Found found =
        assertInstanceOf(RockEstimate.Found.class, RockEstimator.estimate(coarse, stepMm, 4));
    assertTrue(found.standardUncertaintyMm() > stepMm / Math.sqrt(12 * 15) * 0.8);
    assertEquals(0, found.valueMm(), 2 * found.standardUncertaintyMm());
  }

  @Test
  void sixHundredSamplesTakeNoLongTime() {
    List<RockSample> samples = RockingRecord.of(3, Hand.WANDERING, Ends.GRADUAL, 50).samples();
    for (int k = 0; k < 20; k++) {
      found(samples);
    }
    long fastestNs = Long.MAX_VALUE;
    for (int k = 0; k < 10; k++) {
      long start = System.nanoTime();
      found(samples);
      fastestNs = Math.min(fastestNs, System.nanoTime() - start);
    }
    assertTrue(fastestNs < 250_000_000L, fastestNs + " ns");
  }

  private static double rocked(double tS) {
    double root = Math.sin(ROCKING_RAD_PER_S * (tS - 0.2));
    return 0.4 * root * root;
  }

  private static List<RockSample> steady(double fromS, double valueMm) {
    return IntStream.range(0, 110)
        .mapToObj(i -> new RockSample(fromS + 0.05 * i, valueMm + 0.001 * (i % 3 - 1)))
        .toList();
  }

  private static List<RockSample> record(double rate, DoubleUnaryOperator valueMm) {
    return IntStream.range(0, (int) (12 * rate))
        .mapToDouble(i -> i / rate)
        .mapToObj(t -> new RockSample(t, Math.rint(valueMm.applyAsDouble(t) / STEP_MM) * STEP_MM))
        .toList();
  }

  private static void assertNotEnough(List<RockSample> samples) {
    RockEstimate estimate = RockEstimator.estimate(samples, STEP_MM, 4);
    assertInstanceOf(RockEstimate.NotEnough.class, estimate, estimate::toString);
  }

  private static RockEstimate.Found found(List<RockSample> samples) {
    return assertInstanceOf(RockEstimate.Found.class, RockEstimator.estimate(samples, STEP_MM, 4));
  }
}
