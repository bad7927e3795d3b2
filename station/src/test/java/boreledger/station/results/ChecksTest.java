package boreledger.station.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.session.SmallJob;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits: taper 0.050, out-of-round 0.030, bore 96.000 to 96.050, wear limit 96.150 mm. */
class ChecksTest {
  private static final double NANOMETRE = 1e-6;

  /** The setting ring is 96.002 mm: this reading is a bore of 96.010 mm. */
  private static final double SMALL = 0.008;

  private final SmallJob job = SmallJob.standard();

  @Test
  void aSoundBoreKeepsEveryLimitAndAsksForNothing() {
    Computed computed = whole(SMALL + 0.010, SMALL + 0.012, SMALL, SMALL + 0.001);

    assertEquals(
        List.of("taper", "out-of-round", "bore-min", "bore-max", "wear-limit"), names(computed));
    for (JsonNode check : computed.bore().path("checks")) {
      assertEquals("within", check.path("state").asText(), check::toString);
    }
    assertFalse(computed.results().attention());
  }

  @Test
  void eachCheckShowsItsValueAndItsLimit() {
    // 96.030, 96.034, 96.010 and 96.012 mm.
    Computed computed = whole(0.028, 0.032, 0.008, 0.010);

    assertCheck(computed, "taper", 0.022, 0.050);
    assertCheck(computed, "out-of-round", 0.004, 0.030);
    assertCheck(computed, "bore-min", 96.010, 96.000);
    assertCheck(computed, "bore-max", 96.034, 96.050);
    assertCheck(computed, "wear-limit", 96.034, 96.150);
  }

  /**
   * By hand: a difference leaves out what both ends share, so u² = 2 x 0.001²/12 + 0.002²/3 and the
   * guard band (one-sided, 95 %) is 1.645 x 0.00122 = 0.0020 mm.
   */
  @ParameterizedTest
  @CsvSource({
    "0.0479, within",
    "0.0481, undecided",
    "0.0500, undecided",
    "0.0519, undecided",
    "0.0521, beyond"
  })
  void aTaperIsUndecidedInsideItsGuardBand(double taperMm, String state) {
    Computed computed = whole(SMALL + taperMm, SMALL + taperMm - 0.02, SMALL, SMALL + 0.01);

    JsonNode taper = computed.check("taper");
    assertEquals(taperMm, taper.path("value_mm").asDouble(), NANOMETRE);
    assertEquals(
        1.959964 * Math.sqrt(2 * 1e-6 / 12 + 4e-6 / 3),
        taper.path("expanded_uncertainty_mm").asDouble(),
        NANOMETRE);
    assertEquals(state, taper.path("state").asText());
  }

  @Test
  void aValueOnItsLimitIsAsSureToKeepItAsNot() {
    Computed computed = whole(SMALL + 0.050, SMALL + 0.030, SMALL, SMALL + 0.010);

    assertEquals(0.5, computed.check("taper").path("probability_within").asDouble(), 1e-6);
  }

  @Test
  void anUndecidedCheckAsksForAttention() {
    SmallJob taperOnly =
        job.with("bore_max_mm = 96.050\nwear_limit_mm = 96.150\n", "")
            .with("out_of_round_max_mm = 0.030\n", "");
    Computed computed = whole(taperOnly, SMALL + 0.050, SMALL + 0.030, SMALL, SMALL + 0.010);

    assertEquals("undecided", computed.check("taper").path("state").asText());
    assertTrue(computed.results().attention());
  }

  @Test
  void aBoreBelowTheSmallestIsBeyond() {
    Computed computed = whole(0.005, 0.005, 0.005, -0.012);

    assertEquals(95.990, computed.check("bore-min").path("value_mm").asDouble(), NANOMETRE);
    assertEquals("beyond", computed.check("bore-min").path("state").asText());
    assertTrue(computed.results().attention());
  }

  @Test
  void whatReadingsStillToComeCouldChangeIsNotDecidedYet() {
    Computed computed =
        Computed.of(job, Sitting.ofBores(job).opening(0).bores(12, 0.018, 0.020).closing(0));

    assertEquals(List.of("out-of-round", "bore-min", "bore-max", "wear-limit"), names(computed));
    for (JsonNode check : computed.bore().path("checks")) {
      assertTrue(check.path("state").isNull(), check::toString);
    }
    assertFalse(computed.results().attention());
  }

  @Test
  void whatIsBeyondAlreadyIsSaidAlthoughReadingsAreToCome() {
    Computed computed =
        Computed.of(
            job,
            Sitting.ofBores(job)
                .opening(0)
                .bore(12, "thrust", 0.068)
                .bore(60, "thrust", 0.008)
                .closing(0));

    assertEquals("beyond", computed.check("taper").path("state").asText());
    assertEquals("beyond", computed.check("bore-max").path("state").asText());
    assertTrue(computed.check("wear-limit").path("state").isNull());
    assertTrue(computed.results().attention());
  }

  @Test
  void aLimitThatTheJobLeavesOutIsNotChecked() {
    SmallJob bare = job.with("taper_max_mm = 0.050\n", "").with("wear_limit_mm = 96.150\n", "");

    assertEquals(
        List.of("out-of-round", "bore-min", "bore-max"),
        names(whole(bare, 0.01, 0.01, 0.01, 0.01)));
  }

  @Test
  void aBoreWithoutReadingsHasNoChecks() {
    assertEquals(List.of(), names(Computed.of(job, Sitting.ofBores(job).opening(0))));
  }

  private void assertCheck(Computed computed, String name, double valueMm, double limitMm) {
    JsonNode check = computed.check(name);
    assertEquals(valueMm, check.path("value_mm").asDouble(), NANOMETRE, name);
    assertEquals(limitMm, check.path("limit_mm").asDouble(), name);
  }

  private Computed whole(double thrust12, double pin12, double thrust60, double pin60) {
    return whole(job, thrust12, pin12, thrust60, pin60);
  }

  private static Computed whole(
      SmallJob job, double thrust12, double pin12, double thrust60, double pin60) {
    return Computed.of(
        job,
        Sitting.ofBores(job)
            .opening(0)
            .bores(12, thrust12, pin12)
            .bores(60, thrust60, pin60)
            .closing(0));
  }

  private static List<String> names(Computed computed) {
    return computed.bore().path("checks").findValuesAsText("check");
  }
}
