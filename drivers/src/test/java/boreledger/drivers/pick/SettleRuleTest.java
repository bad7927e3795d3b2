package boreledger.drivers.pick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import boreledger.drivers.decoder.Sample;
import boreledger.drivers.profile.PickSpec;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SettleRuleTest {
  private static final PickSpec.Settle SPEC = new PickSpec.Settle(0.8, 0.003, 0.02);

  private final List<Sample> samples = new ArrayList<>();
  private double nowS;

  /** Ten samples a second. */
  private SettleRuleTest then(double... valuesMm) {
    for (double valueMm : valuesMm) {
      samples.add(Samples.at(nowS, valueMm));
      nowS = Math.round(nowS * 10 + 1) / 10.0;
    }
    return this;
  }

  private SettleRuleTest still(double valueMm, int count) {
    for (int i = 0; i < count; i++) {
      then(valueMm);
    }
    return this;
  }

  private SettleRuleTest silence(double forS) {
    nowS += forS;
    return this;
  }

  private List<PickEvent> events(PlausibleWindow window) {
    return Samples.play(new SettleRule(SPEC, window), samples);
  }

  private List<Double> picked() {
    return Samples.picked(events(null));
  }

  @Test
  void samplesStillForLongEnoughAreOneReading() {
    PickEvent.Picked picked = (PickEvent.Picked) still(0.5, 9).events(null).get(0);
    assertEquals(0.5, picked.valueMm());
    assertEquals(0.4, picked.tS(), 1e-12);
    assertEquals(9, picked.samples().size());
    assertEquals(0.0, picked.standardUncertaintyMm());
  }

  @Test
  void samplesStillForTooShortAreNone() {
    assertEquals(List.of(), still(0.5, 8).picked());
  }

  @Test
  void valueIsTheMeanWithItsStandardUncertainty() {
    // Nine values: mean 0.501; s = 0.001 * sqrt(6 / 8); s / sqrt(9) by hand.
    then(0.500, 0.501, 0.502, 0.500, 0.501, 0.502, 0.500, 0.501, 0.502);
    PickEvent.Picked picked = (PickEvent.Picked) events(null).get(0);
    assertEquals(0.501, picked.valueMm(), 1e-12);
    assertEquals(0.001 * Math.sqrt(6.0 / 8) / 3, picked.standardUncertaintyMm(), 1e-12);
  }

  @Test
  void spreadOfExactlyTheLimitCountsAsStill() {
    assertEquals(1, then(0.009, 0.012, 0.009, 0.012, 0.009).still(0.012, 4).picked().size());
  }

  @Test
  void movingValueIsNotPicked() {
    for (int i = 0; i < 100; i++) {
      then(i * 0.002);
    }
    List<PickEvent> events = events(null);
    assertEquals(List.of(), Samples.picked(events));
    assertEquals(List.of("never still within 0.003 mm for 0.8 s"), Samples.notPicked(events));
  }

  @Test
  void heldLongerItIsStillOneReading() {
    assertEquals(List.of(0.5), still(0.5, 100).picked());
  }

  @Test
  void nextReadingNeedsAMoveFirst() {
    assertEquals(List.of(0.5, 0.519), still(0.5, 9).then(0.6, 0.6).still(0.519, 9).picked());
    samples.clear();
    assertEquals(List.of(0.5), still(0.5, 9).still(0.519, 20).picked());
    samples.clear();
    assertEquals(List.of(0.5, 0.52), still(0.5, 9).still(0.52, 20).picked());
  }

  @Test
  void singleWildSampleDoesNotRepeatAReading() {
    assertEquals(List.of(0.5), still(0.5, 12).then(0.8).still(0.5, 20).picked());
  }

  @Test
  void singleWildSampleOnlyDelaysAReading() {
    assertEquals(List.of(0.5), still(0.5, 5).then(9).still(0.5, 20).picked());
  }

  @Test
  void gaugeThatWakesWhereItFellAsleepGivesNoReadingAndSaysSoOnce() {
    List<PickEvent> events = still(0.5, 12).silence(60).still(0.501, 40).events(null);
    assertEquals(List.of(0.5), Samples.picked(events));
    assertEquals(2, events.size());
    PickEvent.NotPicked none = assertInstanceOf(PickEvent.NotPicked.class, events.get(1));
    assertEquals(9, none.samples().size());
    assertEquals(
        "after a silence, still where the last reading was; move the gauge away and back for a new"
            + " one",
        none.why());
  }

  @Test
  void gaugeThatWakesElsewhereGivesAReading() {
    assertEquals(List.of(0.5, 0.53), still(0.5, 12).silence(60).still(0.53, 12).picked());
  }

  @Test
  void gaugeThatWakesAndIsMovedAwayAndBackGivesAReading() {
    still(0.5, 12).silence(60).still(0.5, 12).then(0.8, 0.8).still(0.5, 12);
    assertEquals(List.of(0.5, 0.5), picked());
  }

  @Test
  void shortPauseInTheLineDoesNotRepeatAReading() {
    assertEquals(List.of(0.5), still(0.5, 12).silence(1).still(0.5, 12).picked());
  }

  @Test
  void silenceIsNotStillness() {
    assertEquals(List.of(), still(0.5, 4).silence(1).still(0.5, 4).picked());
  }

  @Test
  void stillnessOutsideThePlausibleWindowIsFreeAir() {
    still(3, 20).still(0.5, 12).still(3, 20).still(0.5, 12).still(3, 20);
    assertEquals(List.of(0.5, 0.5), Samples.picked(events(new PlausibleWindow(-0.5, 2))));
  }

  @Test
  void onlyFreeAirTellsThatNothingSettled() {
    List<PickEvent> events = still(3, 20).events(new PlausibleWindow(-0.5, 2));
    assertEquals(List.of("never still within 0.003 mm for 0.8 s"), Samples.notPicked(events));
  }

  @Test
  void pickedSamplesGiveTheSameReadingAgain() {
    List<PickEvent> events = then(0.1, 0.2, 0.3, 0.501).still(0.5, 8).then(0.502).events(null);
    PickEvent.Picked picked = (PickEvent.Picked) events.get(0);
    assertEquals(picked, SettleRule.pick(picked.samples()));
  }
}
