package boreledger.drivers.pick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.calc.rock.RockEstimate;
import boreledger.calc.rock.RockSample;
import boreledger.drivers.decoder.Sample;
import boreledger.drivers.profile.PickSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Where readings begin and end. What they give is the estimator's: here a plain one that counts
 * dips and takes the lowest value stands in for it.
 */
class RockRuleTest {
  private static final PickSpec.Rock SPEC = new PickSpec.Rock(2.0, 1.5, 3);
  private static final double NEAR_MM = 0.004;

  private final List<List<RockSample>> asked = new ArrayList<>();

  private RockEstimate lowest(List<RockSample> samples, double resolutionMm, int minRocks) {
    asked.add(samples);
    double[] sortedMm = samples.stream().mapToDouble(RockSample::valueMm).sorted().toArray();
    double leastMm = sortedMm[0];
    double rangeMm = sortedMm[(sortedMm.length - 1) * 9 / 10] - leastMm;
    int dips = 0;
    boolean high = true;
    for (RockSample sample : samples) {
      boolean low = sample.valueMm() <= leastMm + 0.35 * rangeMm;
      dips += low && high ? 1 : 0;
      high = !low && (high || sample.valueMm() > leastMm + 0.6 * rangeMm);
    }
    double middleS = samples.get(samples.size() / 2).tS();
    return dips >= minRocks
        ? new RockEstimate.Found(middleS, leastMm, 0.001, dips)
        : new RockEstimate.NotEnough(dips, dips + " rocks seen, " + minRocks + " needed");
  }

  private RockPick pick() {
    return new RockPick(SPEC, 0.001, this::lowest);
  }

  private PickRule rule(PlausibleWindow window) {
    return new RockRule(SPEC, window, pick(), 0.001);
  }

  private List<PickEvent> play(RockingHand hand, PlausibleWindow window) {
    return Samples.play(rule(window), hand.samples());
  }

  private void assertPicked(RockingHand hand, double... squareMm) {
    assertPicked(hand, null, squareMm);
  }

  private void assertPicked(RockingHand hand, PlausibleWindow window, double... squareMm) {
    List<PickEvent> events = play(hand, window);
    assertEquals(List.of(), Samples.notPicked(events));
    List<Double> picked = Samples.picked(events);
    assertEquals(squareMm.length, picked.size(), picked.toString());
    for (int i = 0; i < squareMm.length; i++) {
      assertEquals(squareMm[i], picked.get(i), NEAR_MM, picked.toString());
    }
  }

  private static RockingHand hand(long seed) {
    return new RockingHand(seed, 96, 20);
  }

  @Test
  void endOfTheStreamEndsAReading() {
    assertPicked(hand(1).rock(0.013, 3, 2, 3), 0.013);
  }

  @Test
  void silenceEndsAReading() {
    RockingHand hand = hand(2).rock(0.013, 3, 2, 3).silence(1.6).rock(0.021, 3, 2, 3);
    assertPicked(hand, 0.013, 0.021);
  }

  @Test
  void shortPauseInTheLineEndsNone() {
    assertPicked(hand(3).rock(0.013, 3, 2, 3).silence(1.3).rock(0.013, 3, 2, 3), 0.013);
  }

  @Test
  void silenceTheLineTellsOfEndsAReadingAtOnce() {
    PickRule rule = rule(null);
    List<Sample> samples = hand(4).rock(0.013, 3, 2, 3).samples();
    samples.forEach(sample -> assertEquals(List.of(), rule.accept(sample)));
    double lastS = samples.get(samples.size() - 1).tS();
    assertEquals(List.of(), rule.quiet(lastS + 1.5));
    assertEquals(1, Samples.picked(rule.quiet(lastS + 1.6)).size());
    assertEquals(List.of(), rule.quiet(lastS + 1.7));
    assertEquals(List.of(), rule.end(lastS + 2));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.3, 0.8, 1.2, 1.9, 2.1, 3.0, 9.0})
  void freeAirBetweenReadingsEndsThem(double stopMm) {
    RockingHand hand = hand(5).restAt(stopMm, 3).goTo(0.2).rock(0.013, 3, 2, 3).goTo(stopMm);
    hand.restAt(stopMm, 1.5).goTo(0.3).rock(0.021, 3, 2, 4).goTo(stopMm).restAt(stopMm, 2);
    hand.goTo(0.2).rock(-0.05, 2.5, 2, 3).goTo(stopMm).restAt(stopMm, 5);
    assertPicked(hand, 0.013, 0.021, -0.05);
  }

  @Test
  void leavingFarAboveEndsAReadingEvenBriefly() {
    RockingHand hand = hand(6).rock(0.013, 3, 2, 3).restAt(2.5, 0.2).rock(0.021, 3, 2, 3);
    assertPicked(hand, 0.013, 0.021);
  }

  @Test
  void leavingThePlausibleWindowEndsAReading() {
    RockingHand hand = hand(7).restAt(1.1, 0.3).goTo(0.1).rock(0.013, 3, 2, 3);
    hand.goTo(1.3).restAt(1.1, 0.4).goTo(0.1).rock(0.021, 3, 2, 3).goTo(1.3).restAt(1.1, 0.5);
    assertPicked(hand, new PlausibleWindow(-0.5, 1.0), 0.013, 0.021);
  }

  @Test
  void rockingBeyondTheWindowsUpperLimitIsNotLeaving() {
    // The reading is plausible; tilted by 8 degrees, 150 mm read 1.47 mm more.
    RockingHand hand = new RockingHand(28, 150, 20).restAt(2.9, 2).goTo(1.3);
    hand.rock(0.95, 8, 3, 3).goTo(2.9).restAt(2.9, 0.5).goTo(1.3).rock(0.99, 8, 3, 3).goTo(2.9);
    assertPicked(hand.restAt(2.9, 0.5), new PlausibleWindow(-0.5, 2.0), 0.95, 0.99);
  }

  @Test
  void readingBelowTheWindowIsNone() {
    RockingHand hand = hand(29).rock(0.013, 3, 2, 3).silence(2).rock(-0.9, 3, 2, 3).silence(2);
    assertPicked(hand.rock(0.021, 3, 2, 3), new PlausibleWindow(-0.5, 2.0), 0.013, 0.021);
  }

  @Test
  void freeAirThatWandersFarAboveIsNoReading() {
    RockingHand hand = hand(8).rock(0.013, 3, 2, 3);
    for (int i = 0; i < 20; i++) {
      hand.restAt(2.6 + 0.4 * Math.sin(i), 0.3);
    }
    assertPicked(hand.goTo(0.3).rock(0.021, 3, 2, 3).goTo(3), 0.013, 0.021);
  }

  @Test
  void freeAirThatWandersBeforeTheFirstReadingIsNoReading() {
    RockingHand hand = hand(9);
    for (int i = 0; i < 20; i++) {
      hand.restAt(2.6 + 0.4 * Math.sin(i), 0.3);
    }
    assertPicked(hand.goTo(0.3).rock(0.021, 3, 2, 3), 0.021);
  }

  @ParameterizedTest
  @CsvSource({"150, 8, 2", "150, 8, 1", "96, 8, 3", "60, 8, 2", "96, 1, 2", "150, 5, 4"})
  void wideRockingIsNotLeaving(double diameterMm, double tiltDeg, double periodS) {
    RockingHand hand = new RockingHand(10, diameterMm, 20).rock(0.013, tiltDeg, periodS, 6);
    assertEquals(1, Samples.picked(play(hand, null)).size());
    assertEquals(hand.samples().size(), asked.get(0).size());
  }

  @ParameterizedTest
  @ValueSource(doubles = {-9.0, -2.5, 2.5, 9.0})
  void singleWildSampleNeitherEndsNorSpoilsAReading(double wildMm) {
    RockingHand hand = hand(11).rock(0.013, 3, 2, 2).wild(wildMm).rock(0.013, 3, 2, 2);
    assertPicked(hand, 0.013);
    assertEquals(1, asked.size());
    assertTrue(asked.get(0).stream().noneMatch(sample -> sample.valueMm() == wildMm));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.3, 0.3})
  void singleGlitchNeitherEndsNorHidesFromTheEstimator(double byMm) {
    RockingHand hand = hand(12).rock(0.013, 3, 2, 2).wild(0.013 + byMm).rock(0.013, 3, 2, 2);
    play(hand, null);
    assertEquals(1, asked.size());
    assertEquals(hand.samples().size(), asked.get(0).size());
  }

  @Test
  void singleWildSampleInFreeAirIsNoReading() {
    RockingHand hand = hand(13).rock(0.013, 3, 2, 3).goTo(1.2).restAt(1.2, 2).wild(-0.2);
    hand.restAt(1.2, 2).wild(9).restAt(1.2, 2).goTo(0.2).rock(0.021, 3, 2, 3);
    assertPicked(hand, 0.013, 0.021);
  }

  @Test
  void neighbouringGlitchesInFreeAirAreNoAttempt() {
    RockingHand hand = hand(25).rock(0.013, 3, 2, 3).goTo(1.2).restAt(1.2, 2);
    hand.silence(3).restAt(1.2, 1).wild(0.9).wild(0.95).restAt(1.2, 1).silence(3);
    assertPicked(hand.rock(0.021, 3, 2, 3), 0.013, 0.021);
  }

  @Test
  void neighbouringLowGlitchesAreNotTheFloor() {
    RockingHand hand = hand(26).rock(0.013, 3, 2, 2).wild(-1.3).wild(-1.4).rock(0.013, 3, 2, 2);
    assertPicked(hand.goTo(1.2).restAt(1.2, 2), 0.013);
    assertTrue(asked.get(0).size() > 150, "asked of " + asked.get(0).size());
  }

  @Test
  void quickWayInBelowTheRocksIsNotAskedForTheValue() {
    // Eight degrees reach 0.94 mm; the way in comes past 0.6 mm within one sample of the floor.
    RockingHand hand = hand(27).restAt(3, 2).wild(1.6).wild(0.6).restAt(0.013, 0.5);
    play(hand.rock(0.013, 8, 2, 3).silence(2), null);
    assertEquals(1, asked.size());
    assertEquals(0.013, asked.get(0).get(0).valueMm(), 0.003);
  }

  @Test
  void pauseAtATiltIsNotLeaving() {
    RockingHand hand = hand(14).rock(0.013, 4, 2, 2).goTo(0.15).restAt(0.15, 2);
    assertPicked(hand.rock(0.013, 4, 2, 2), 0.013);
  }

  @Test
  void restingSquareIsNotLeaving() {
    RockingHand hand = hand(15).rock(0.013, 4, 2, 2).goTo(0.013).restAt(0.013, 3);
    assertPicked(hand.rock(0.013, 4, 2, 2), 0.013);
  }

  @Test
  void restingSquareBeforeTheFirstRockIsPartOfTheReading() {
    assertPicked(hand(16).restAt(0.013, 3).rock(0.013, 4, 2, 2).silence(2), 0.013);
  }

  @Test
  void waysInAndOutAreNotAskedForTheValue() {
    play(hand(17).restAt(1.2, 2).goTo(0.02).rock(0.013, 3, 2, 3).goTo(1.2).restAt(1.2, 2), null);
    double highestMm = asked.get(0).stream().mapToDouble(RockSample::valueMm).max().orElseThrow();
    // 96 mm tilted by 3 degrees reads 96 / cos 3° - 96 = 0.132 mm more.
    assertEquals(0.013 + 0.132, highestMm, 0.003);
    assertTrue(asked.get(0).size() > 100);
  }

  @Test
  void tooFewRocksGiveTheReason() {
    RockingHand hand = hand(18).rock(0.013, 3, 2, 3).goTo(1.2).restAt(1.2, 2).goTo(0.3);
    hand.rock(0.021, 3, 3, 1).goTo(1.2).restAt(1.2, 2);
    List<PickEvent> events = play(hand, null);
    assertEquals(1, Samples.picked(events).size());
    assertEquals(1, Samples.notPicked(events).size());
    assertEquals("2 rocks seen, 3 needed", Samples.notPicked(events).get(0));
  }

  @Test
  void heldStillInTheBoreAfterAReadingGivesTheReason() {
    RockingHand hand = hand(19).noise(0).rock(0.013, 3, 2, 3).silence(3).restAt(0.02, 3);
    assertEquals(List.of("1 rocks seen, 3 needed"), Samples.notPicked(play(hand, null)));
  }

  @Test
  void sampleOnItsOwnBetweenSilencesGivesTheReason() {
    RockingHand hand = hand(20).rock(0.013, 3, 2, 3).silence(3).wild(0.02).silence(3).wild(0.1);
    assertEquals(
        List.of("1 rocks seen, 3 needed", "1 rocks seen, 3 needed"),
        Samples.notPicked(play(hand, null)));
  }

  @Test
  void streamOfNothingButFreeAirEndsWithTheReason() {
    List<PickEvent> events = play(hand(21).restAt(1.2, 60), null);
    assertEquals(List.of("the gauge was never seen rocking in a bore"), Samples.notPicked(events));
    assertEquals(1, events.size());
  }

  @Test
  void streamOutsideThePlausibleWindowEndsWithTheReason() {
    List<PickEvent> events = play(hand(22).rock(5, 3, 2, 3), new PlausibleWindow(-0.5, 2));
    assertEquals(List.of("the gauge was never seen rocking in a bore"), Samples.notPicked(events));
  }

  @Test
  void streamWithoutSamplesHasNoEvent() {
    assertEquals(List.of(), rule(null).end(5));
  }

  @Test
  void rockingWithoutEndIsCutWithTheReason() {
    List<PickEvent> events = play(new RockingHand(23, 96, 20).rock(0.013, 3, 2, 510), null);
    assertEquals(
        List.of("more than 20000 samples without leaving the bore"), Samples.notPicked(events));
    assertEquals(RockRule.MOST_SAMPLES, events.get(0).samples().size());
    assertEquals(1, Samples.picked(events).size());
  }

  @Test
  void hoursInFreeAirAreNotKept() {
    PickRule rule = rule(null);
    List<PickEvent> events = new ArrayList<>();
    for (int i = 0; i < 200_000; i++) {
      events.addAll(rule.accept(Samples.at(i * 0.05, 1.2)));
    }
    assertEquals(List.of(), events);
  }

  @Test
  void pickedSamplesGiveTheSameReadingAgain() {
    RockingHand hand = hand(24).restAt(1.2, 2).goTo(0.2).rock(0.013, 3, 2, 2).wild(-5);
    List<PickEvent> events = play(hand.rock(0.013, 3, 2, 2).goTo(1.2).restAt(1.2, 2), null);
    assertEquals(1, events.size());
    assertEquals(events.get(0), pick().of(events.get(0).samples()));
  }

  @Test
  void readingsAreFoundWhateverTheHand() {
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      double stopMm = 0.5 + 3 * random.nextDouble();
      double perSecond = 8 + random.nextInt(43);
      RockingHand hand = new RockingHand(seed, 50 + random.nextInt(100), perSecond).noise(0.001);
      double[] squareMm = new double[5];
      hand.restAt(stopMm, random.nextDouble() * 4);
      for (int i = 0; i < squareMm.length; i++) {
        squareMm[i] = Math.round(100 * random.nextGaussian()) / 1000.0;
        double tiltDeg = 2 + 1.5 * random.nextDouble();
        double periodS = 2 + 2 * random.nextDouble();
        hand.goTo(squareMm[i] + 0.1).rock(squareMm[i], tiltDeg, periodS, 3 + random.nextInt(3));
        hand.goTo(stopMm).restAt(stopMm, 1 + 3 * random.nextDouble());
      }
      List<PickEvent> events = play(hand, null);
      List<Double> picked = Samples.picked(events);
      assertEquals(squareMm.length, picked.size(), "seed " + seed + " " + events.size());
      for (int i = 0; i < squareMm.length; i++) {
        assertEquals(squareMm[i], picked.get(i), 0.03, "seed " + seed);
      }
    }
  }
}
