package boreledger.station.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.Gap;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.SmallGauge;
import boreledger.station.session.SmallJob;
import org.junit.jupiter.api.Test;

class SessionsThatCountTest {
  private static final String SECOND_RING =
      """
      [[ring]]
      name = "second"
      cte_per_k = 12.0e-6
      travel_mm = [9.0, 113.0]
      gap_min_mm = 0.30
      gap_max_mm = 0.80
      target_mm = 0.60
      depths_mm = [12.0, 60.0]
      """;

  private final SmallJob job = SmallJob.standard();

  @Test
  void theLatestBoreSessionCounts() {
    Computed computed = Computed.of(job, wholeBores(0.040), wholeBores(0.020));

    assertEquals(96.022, computed.diameterMm(0), 1e-9);
  }

  @Test
  void readingsOfAnEarlierSessionAreNotMixedIn() {
    Computed computed =
        Computed.of(
            job, wholeBores(0.040), Sitting.ofBores(job).opening(0).bore(12, "thrust", 0.020));

    assertEquals(96.022, computed.diameterMm(0), 1e-9);
    assertTrue(computed.position(1).path("diameter_mm").isNull());
    assertTrue(computed.position(2).path("diameter_mm").isNull());
  }

  @Test
  void eachSessionIsReadWithItsOwnGauge() {
    Sitting sizes =
        Sitting.ofBores(job)
            .with(SmallGauge.size())
            .opening(96.002)
            .bore(12, "thrust", 96.030)
            .closing(96.002);

    assertEquals(96.030, Computed.of(job, wholeBores(0.040), sizes).diameterMm(0), 1e-9);
  }

  @Test
  void gapsOfAnotherRingAreNotThisRings() {
    SmallJob two = job.with("[[ring]]", SECOND_RING + "[[ring]]");
    Computed computed =
        Computed.of(two, Sitting.ofGaps(two, "top").gap(12, 0.48), Sitting.ofGaps(two, "second"));

    assertEquals("second", computed.json().at("/cylinders/0/rings/0/ring").asText());
    assertTrue(computed.json().at("/cylinders/0/rings/0/gaps/0/measured_mm").isNull());
    assertEquals(
        0.48, computed.json().at("/cylinders/0/rings/1/gaps/0/measured_mm").asDouble(), 1e-9);
  }

  @Test
  void gapsAndBoresOfDifferentSessionsGoTogether() {
    Computed computed =
        Computed.of(job, Sitting.ofGaps(job).gap(12, 0.48).gap(60, 0.48), wholeBores(0.020));

    assertEquals(0.48, computed.gap(0).path("expected_mm").asDouble(), 1e-9);
  }

  @Test
  void everyCylinderHasItsOwnReadings() {
    SmallJob two = job.with("cylinders = 1", "cylinders = 2");
    Computed computed =
        Computed.of(
            two,
            Sitting.ofBores(two)
                .read(SettingCheck.OPENING, 0)
                .read(new Bore(1, 12, "thrust"), 0.010)
                .read(new Bore(2, 12, "thrust"), 0.030)
                .read(SettingCheck.CLOSING, 0),
            Sitting.ofGaps(two).read(new Gap(2, "top", 60), 0.51));

    assertEquals(
        96.012, computed.json().at("/cylinders/0/bore/positions/0/diameter_mm").asDouble(), 1e-9);
    assertEquals(
        96.032, computed.json().at("/cylinders/1/bore/positions/0/diameter_mm").asDouble(), 1e-9);
    assertTrue(computed.json().at("/cylinders/0/rings/0/gaps/1/measured_mm").isNull());
    assertEquals(
        0.51, computed.json().at("/cylinders/1/rings/0/gaps/1/measured_mm").asDouble(), 1e-9);
    assertEquals(2, computed.json().at("/cylinders/1/cylinder").asInt());
  }

  @Test
  void aJobWithoutRingsHasNone() {
    SmallJob ringless = new SmallJob(job.text().substring(0, job.text().indexOf("[[ring]]")));

    assertEquals(
        0, Computed.of(ringless, wholeBores(ringless, 0)).json().at("/cylinders/0/rings").size());
  }

  @Test
  void aRefusedSampleIsCountedAndAsksForAttention() {
    assertFalse(Computed.of(job, wholeBores(0.020)).results().attention());

    Computed computed = Computed.of(job, wholeBores(0.020).refused("no number in it"));

    assertEquals(1, computed.json().path("refused").asInt());
    assertTrue(computed.results().attention());
  }

  private Sitting wholeBores(double deviationMm) {
    return wholeBores(job, deviationMm);
  }

  private static Sitting wholeBores(SmallJob job, double deviationMm) {
    return Sitting.ofBores(job)
        .opening(0)
        .bores(12, deviationMm, deviationMm)
        .bores(60, deviationMm, deviationMm)
        .closing(0);
  }
}
