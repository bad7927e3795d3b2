package boreledger.station.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.session.SmallJob;
import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

/** Gaps against bores, worked out by hand. Setting ring 96.002 mm, everything at 20 °C. */
class GapsTest {
  private static final double NANOMETRE = 1e-6;
  private static final String RING_DEPTHS = "target_mm = 0.52\ndepths_mm = [12.0, 60.0]";

  private final SmallJob job = SmallJob.standard();

  @Test
  void theExpectedChangeIsThatOfThePerimeterFromTheShallowestGaugedDepth() {
    Computed computed =
        Computed.of(job, bores(job, 0.038, 0.018, 0.008, 0.002), gaps(job, 0.480, 0.400));

    double changeMm = perimeterMm(96.010, 96.004) - perimeterMm(96.040, 96.020);
    assertEquals(0, change(computed, 0).asDouble(), NANOMETRE);
    assertEquals(changeMm, change(computed, 1).asDouble(), NANOMETRE);
    // By the mean diameter alone: pi x (96.007 - 96.030).
    assertEquals(Math.PI * -0.023, change(computed, 1).asDouble(), NANOMETRE);
  }

  @Test
  void theShallowestGaugedDepthIsTheFirstOneWithAGap() {
    Sitting deepOnly = Sitting.ofGaps(job).gap(60, 0.400);
    Computed computed = Computed.of(job, bores(job, 0.038, 0.018, 0.008, 0.002), deepOnly);

    assertEquals(0, change(computed, 1).asDouble(), NANOMETRE);
    assertEquals(Math.PI * 0.023, change(computed, 0).asDouble(), NANOMETRE);
  }

  @Test
  void theGapStandsAsItWasRead() {
    Computed computed =
        Computed.of(job, bores(job, 0, 0, 0, 0), gaps(job, 0.480, 0.400).at(null, 35.0));

    assertEquals(0.480, computed.gap(0).path("measured_mm").asDouble());
    assertEquals(0.400, computed.gap(1).path("measured_mm").asDouble());
  }

  @Test
  void withoutBoresNothingIsExpected() {
    Computed computed = Computed.of(job, gaps(job, 0.480, 0.400));

    for (int i = 0; i < 2; i++) {
      assertTrue(change(computed, i).isNull());
      assertTrue(computed.gap(i).path("expected_mm").isNull());
      assertTrue(computed.gap(i).path("en").isNull());
      assertFalse(computed.gap(i).path("measured_mm").isNull());
    }
  }

  @Test
  void withoutGapsTheChangeIsKnownAndTheRestIsNot() {
    Computed computed = Computed.of(job, bores(job, 0.038, 0.018, 0.008, 0.002));

    assertEquals(Math.PI * -0.023, change(computed, 1).asDouble(), NANOMETRE);
    assertTrue(computed.gap(1).path("measured_mm").isNull());
    assertTrue(computed.gap(1).path("expected_mm").isNull());
  }

  @Test
  void aSingleGapHasNothingToBeComparedWith() {
    Computed computed =
        Computed.of(job, bores(job, 0, 0, 0, 0), Sitting.ofGaps(job).gap(12, 0.480));

    assertTrue(computed.gap(0).path("expected_mm").isNull());
    assertTrue(computed.gap(0).path("en").isNull());
  }

  /** Round bores of 96.032, 96.022 and 96.012 mm; every reading is equally well known. */
  @Test
  void theExpectedGapIsThatOfTheMeanLengthOfTheOtherReadings() {
    SmallJob three = job.with("[12.0, 60.0]", "[12.0, 36.0, 60.0]");
    Sitting bores =
        Sitting.ofBores(three)
            .opening(0)
            .bores(12, 0.030, 0.030)
            .bores(36, 0.020, 0.020)
            .bores(60, 0.010, 0.010)
            .closing(0);
    Sitting gaps = Sitting.ofGaps(three).gap(12, 0.500).gap(36, 0.480).gap(60, 0.435);

    Computed computed = Computed.of(three, bores, gaps);

    double[] lengthMm = {
      Math.PI * 96.032 - 0.500, Math.PI * 96.022 - 0.480, Math.PI * 96.012 - 0.435
    };
    double[] boreMm = {96.032, 96.022, 96.012};
    for (int i = 0; i < 3; i++) {
      double othersMm = (lengthMm[(i + 1) % 3] + lengthMm[(i + 2) % 3]) / 2;
      assertEquals(
          Math.PI * boreMm[i] - othersMm,
          computed.gap(i).path("expected_mm").asDouble(),
          NANOMETRE);
    }
  }

  @Test
  void aGapBetweenTwoGaugedDepthsTakesThePerimeterBetweenThem() {
    SmallJob between = job.with(RING_DEPTHS, "target_mm = 0.52\ndepths_mm = [12.0, 24.0]");
    Sitting gaps = Sitting.ofGaps(between).gap(12, 0.480).gap(24, 0.460);

    Computed computed = Computed.of(between, bores(between, 0.040, 0.040, 0.0, 0.0), gaps);

    // A quarter of the way from 12 to 60 mm.
    assertEquals(Math.PI * -0.010, change(computed, 1).asDouble(), NANOMETRE);
    assertFalse(computed.gap(1).path("beyond_readings").asBoolean());
  }

  @Test
  void aGapBeyondTheBoreReadingsTakesTheNearestPerimeterAndSaysSo() {
    SmallJob beyond = job.with(RING_DEPTHS, "target_mm = 0.52\ndepths_mm = [12.0, 100.0]");
    Sitting gaps = Sitting.ofGaps(beyond).gap(12, 0.480).gap(100, 0.360);

    Computed computed = Computed.of(beyond, bores(beyond, 0.040, 0.040, 0.0, 0.0), gaps);

    assertEquals(Math.PI * -0.040, change(computed, 1).asDouble(), NANOMETRE);
    assertTrue(computed.gap(1).path("beyond_readings").asBoolean());
    assertFalse(computed.gap(0).path("beyond_readings").asBoolean());
  }

  /**
   * A ring of 12.0e-6 per kelvin in a bore of 11.0e-6 per kelvin, both at 30 °C: the length at 20
   * °C is (P (1 + 11.0e-6 x 10) - g) / (1 + 12.0e-6 x 10).
   */
  @Test
  void gapsReadWarmAreExpectedAtTwentyDegrees() {
    Computed computed =
        Computed.of(
            job, bores(job, 0.028, 0.028, 0.008, 0.008), gaps(job, 0.480, 0.410).at(null, 30.0));

    double lengthMm = (Math.PI * 96.030 * 1.00011 - 0.480) / 1.00012;
    assertEquals(
        Math.PI * 96.010 - lengthMm, computed.gap(1).path("expected_mm").asDouble(), NANOMETRE);
  }

  /**
   * Two equal round bores, so that only the readings' own lines are left: bore difference pi x
   * sqrt(0.001²/12 + 0.002²/3), each gap sqrt(0.001²/12 + 0.002²/3); E_n after ISO 13528.
   */
  @Test
  void agreementIsTheDifferenceOverBothExpandedUncertainties() {
    Computed computed = Computed.of(job, bores(job, 0, 0, 0, 0), gaps(job, 0.480, 0.476));

    double one = Math.sqrt(1e-6 / 12 + 4e-6 / 3);
    double own = 1.959964 * one;
    double expected = 1.959964 * Math.hypot(one, Math.PI * one);
    double en = 0.004 / Math.hypot(own, expected);
    assertEquals(en, computed.gap(0).path("en").asDouble(), 1e-4);
    assertEquals(-en, computed.gap(1).path("en").asDouble(), 1e-4);
    assertFalse(computed.warnsOf("E_n"));
  }

  @Test
  void gapsThatDoNotAgreeWithTheirBoreAskForAttentionAndSayWhatUsuallyCausesIt() {
    Computed computed = Computed.of(job, bores(job, 0, 0, 0, 0), gaps(job, 0.520, 0.440));

    assertTrue(Math.abs(computed.gap(0).path("en").asDouble()) > 1);
    assertTrue(computed.warnsOf("ring not square"));
    assertTrue(computed.warnsOf("with two depths nothing tells which"));
    assertTrue(computed.results().attention());
  }

  private static JsonNode change(Computed computed, int index) {
    return computed.gap(index).path("expected_change_mm");
  }

  private static Sitting bores(
      SmallJob job, double thrust12, double pin12, double thrust60, double pin60) {
    return Sitting.ofBores(job)
        .opening(0)
        .bores(12, thrust12, pin12)
        .bores(60, thrust60, pin60)
        .closing(0);
  }

  private static Sitting gaps(SmallJob job, double at12, double at60) {
    return Sitting.ofGaps(job).gap(12, at12).gap(60, at60);
  }

  /** The first terms of the series in h = ((a - b)/(a + b))² of Gauss and Kummer. */
  private static double perimeterMm(double oneMm, double otherMm) {
    double h = Math.pow((oneMm - otherMm) / (oneMm + otherMm), 2);
    return Math.PI * (oneMm + otherMm) / 2 * (1 + h / 4 + h * h / 64);
  }
}
