package boreledger.station.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.SmallGauge;
import boreledger.station.session.SmallJob;
import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

/**
 * Diameters worked out by hand: setting ring 96.002 mm with 11.5e-6 per kelvin, block 11.0e-6 per
 * kelvin, gauge resolution 0.001 mm and permissible error 0.002 mm.
 */
class DiametersTest {
  private static final double NANOMETRE = 1e-6;

  /** 95 % of a normal distribution between both tails, as every table of it has it. */
  private static final double K = 1.959964;

  private final SmallJob job = SmallJob.standard();

  @Test
  void aDiameterIsTheSettingPlusTheReadingLessTheZero() {
    Computed computed =
        Computed.of(
            job, Sitting.ofBores(job).opening(0.001).bore(12, "thrust", 0.021).closing(0.001));

    assertEquals(96.022, computed.diameterMm(0), NANOMETRE);
  }

  @Test
  void theZeroRunsStraightFromTheOpeningToTheClosingCheck() {
    Sitting sitting =
        Sitting.ofBores(job)
            .read(SettingCheck.OPENING, 0, 0.000)
            .read(new Bore(1, 12, "thrust"), 25, 0.020)
            .read(new Bore(1, 12, "pin"), 75, 0.020)
            .read(SettingCheck.CLOSING, 100, 0.004);

    Computed computed = Computed.of(job, sitting);

    assertEquals(96.002 + 0.020 - 0.001, computed.diameterMm(0), NANOMETRE);
    assertEquals(96.002 + 0.020 - 0.003, computed.diameterMm(1), NANOMETRE);
  }

  @Test
  void theZeroRunsFromCheckToCheckWhereASessionWasResumed() {
    Sitting sitting =
        Sitting.ofBores(job)
            .read(SettingCheck.OPENING, 0, 0.000)
            .read(new Bore(1, 12, "thrust"), 1800, 0.020)
            .read(SettingCheck.RESUMING, 3600, 0.002)
            .read(new Bore(1, 12, "pin"), 3650, 0.020)
            .read(SettingCheck.CLOSING, 3700, 0.000);

    Computed computed = Computed.of(job, sitting);

    assertEquals(96.002 + 0.020 - 0.001, computed.diameterMm(0), NANOMETRE);
    assertEquals(96.002 + 0.020 - 0.001, computed.diameterMm(1), NANOMETRE);
  }

  @Test
  void withoutAClosingCheckTheOpeningZeroHolds() {
    Computed computed =
        Computed.of(job, Sitting.ofBores(job).opening(0.003).bore(12, "thrust", 0.020));

    assertEquals(96.002 + 0.020 - 0.003, computed.diameterMm(0), NANOMETRE);
  }

  @Test
  void checksOfOneMomentCountAsTheirMean() {
    Sitting sitting =
        Sitting.ofBores(job)
            .read(SettingCheck.OPENING, 10, 0.000)
            .read(new Bore(1, 12, "thrust"), 10, 0.020)
            .read(SettingCheck.CLOSING, 10, 0.002);

    assertEquals(96.002 + 0.020 - 0.001, Computed.of(job, sitting).diameterMm(0), NANOMETRE);
  }

  /**
   * Aluminium 356.0, 21.5e-6 per kelvin (Callister & Rethwisch, Table B.6), at 30 °C, gauge set on
   * steel at 25 °C: (96.002 (1 + 11.5e-6 x 5) + 0.010) / (1 + 21.5e-6 x 10), by a desk calculator.
   */
  @Test
  void aWarmAluminiumBlockIsSmallerAtTwentyDegrees() {
    SmallJob aluminium = job.with("cte_per_k = 11.0e-6", "block_material = \"cast-aluminium\"");

    Computed computed =
        Computed.of(aluminium, warm(Sitting.ofBores(aluminium)).bore(12, "thrust", 0.010));

    assertEquals(95.996_880_785_6, computed.diameterMm(0), NANOMETRE);
  }

  /** The same with an iron sleeve of 11.4e-6 per kelvin: divided by (1 + 11.4e-6 x 10). */
  @Test
  void aSleevesOwnMaterialCountsNotTheBlocks() {
    SmallJob sleeved =
        job.with(
            "cte_per_k = 11.0e-6",
            "block_material = \"cast-aluminium\"\nliner_material = \"grey-iron\"");

    Computed computed =
        Computed.of(sleeved, warm(Sitting.ofBores(sleeved)).bore(12, "thrust", 0.010));

    assertEquals(96.006_575_365_4, computed.diameterMm(0), NANOMETRE);
  }

  @Test
  void aGaugeThatReadsSizesIsCorrectedByWhatItReadsOnTheSettingRing() {
    Sitting sitting =
        Sitting.ofBores(job)
            .with(SmallGauge.size())
            .opening(96.010)
            .bore(12, "thrust", 96.040)
            .closing(96.010);

    assertEquals(96.032, Computed.of(job, sitting).diameterMm(0), NANOMETRE);
  }

  @Test
  void whereAPositionWasReadTwiceTheLastReadingCounts() {
    Sitting sitting =
        Sitting.ofBores(job)
            .opening(0)
            .bore(12, "thrust", 0.050)
            .bore(12, "thrust", 0.020)
            .closing(0);

    assertEquals(96.022, Computed.of(job, sitting).diameterMm(0), NANOMETRE);
  }

  @Test
  void everyPlannedPositionIsListedInItsOrderAndNullWhereItWasNotRead() {
    Computed computed =
        Computed.of(job, Sitting.ofBores(job).opening(0).bore(60, "thrust", 0.020).closing(0));

    String[] places = {"12.0 thrust", "12.0 pin", "60.0 thrust", "60.0 pin"};
    for (int i = 0; i < places.length; i++) {
      JsonNode position = computed.position(i);
      assertEquals(
          places[i], position.path("depth_mm").asDouble() + " " + position.path("axis").asText());
      assertEquals(i != 2, position.path("diameter_mm").isNull());
      assertEquals(i != 2, position.path("expanded_uncertainty_mm").isNull());
    }
    assertEquals(places.length, computed.bore().path("positions").size());
  }

  @Test
  void withoutASettingReadingNothingIsKnown() {
    Computed computed = Computed.of(job, Sitting.ofBores(job).bore(12, "thrust", 0.020));

    assertTrue(computed.position(0).path("diameter_mm").isNull());
    assertEquals(0, computed.bore().path("checks").size());
  }

  /**
   * By hand after the GUM, at 20 °C: calibration 0.001/2; resolution 0.001/√12 for zero and
   * reading; permissible error 0.002/√3; 0.5 K each for block, setting ring and gauge.
   */
  @Test
  void theUncertaintyOfADiameterIsItsBudgetByHand() {
    Computed computed =
        Computed.of(job, Sitting.ofBores(job).opening(0).bore(12, "thrust", 0.020).closing(0));

    assertEquals(K * Math.sqrt(sizeVariance()), expandedMm(computed), NANOMETRE);
  }

  @Test
  void withoutAClosingCheckThePermissibleErrorCountsOnceMore() {
    Computed computed = Computed.of(job, Sitting.ofBores(job).opening(0).bore(12, "thrust", 0.020));

    assertEquals(
        K * Math.sqrt(sizeVariance() + squared(0.002) / 3), expandedMm(computed), NANOMETRE);
  }

  @Test
  void whatAReadingsOwnSamplesSayOfItsScatterIsAdded() {
    Sitting sitting =
        Sitting.ofBores(job)
            .opening(0)
            .read(new Bore(1, 12, "thrust"), 20, 0.020, 0.003)
            .closing(0);

    assertEquals(
        K * Math.sqrt(sizeVariance() + squared(0.003)),
        expandedMm(Computed.of(job, sitting)),
        NANOMETRE);
  }

  @Test
  void whatTheChecksOwnSamplesSayOfTheirScatterIsAddedByHowNearTheyAre() {
    Sitting sitting =
        Sitting.ofBores(job)
            .read(SettingCheck.OPENING, 0, 0, 0.003)
            .read(new Bore(1, 12, "thrust"), 20, 0.020)
            .read(SettingCheck.CLOSING, 80, 0, 0.004);

    assertEquals(
        K * Math.sqrt(sizeVariance() + squared(0.75 * 0.003) + squared(0.25 * 0.004)),
        expandedMm(Computed.of(job, sitting)),
        NANOMETRE);
  }

  @Test
  void aStatedRepeatabilityIsAddedUnlessThePermissibleErrorHoldsIt() {
    SmallGauge stated =
        SmallGauge.deviation().with("max_error_mm", "repeatability_mm = 0.003\nmax_error_mm");
    SmallGauge included =
        stated.with("max_error_mm", "max_error_includes = [\"repeatability\"]\nmax_error_mm");

    // The reading in the middle rests on the mean of two checks: 0.003^2 of its own, half of it of
    // theirs.
    assertEquals(
        K * Math.sqrt(sizeVariance() + 1.5 * squared(0.003)), expandedMm(with(stated)), NANOMETRE);
    assertEquals(K * Math.sqrt(sizeVariance()), expandedMm(with(included)), NANOMETRE);
  }

  private Computed with(SmallGauge gauge) {
    return Computed.of(
        job, Sitting.ofBores(job).with(gauge).opening(0).bore(12, "thrust", 0.020).closing(0));
  }

  private static Sitting warm(Sitting sitting) {
    return sitting.at(25.0, 30.0).opening(0);
  }

  private static double expandedMm(Computed computed) {
    return computed.position(0).path("expanded_uncertainty_mm").asDouble();
  }

  private static double sizeVariance() {
    return squared(0.001 / 2)
        + 2 * squared(0.001) / 12
        + squared(0.002) / 3
        + squared(96.022 * 11.0e-6 * 0.5)
        + squared(96.002 * 11.5e-6 * 0.5)
        + squared(96.022 * 11.5e-6 * 0.5);
  }

  private static double squared(double value) {
    return value * value;
  }
}
