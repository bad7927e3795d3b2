package boreledger.station.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.session.SmallJob;
import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;

class TaperAndRoundnessTest {
  private static final double NANOMETRE = 1e-6;
  private final SmallJob job = SmallJob.standard();

  @Test
  void taperIsTheLargestLessTheSmallestAlongEachAxis() {
    Computed computed =
        Computed.of(
            job,
            Sitting.ofBores(job)
                .opening(0)
                .bores(12, 0.040, 0.015)
                .bores(60, 0.010, 0.025)
                .closing(0));

    assertEquals(0.030, taper(computed, "thrust").asDouble(), NANOMETRE);
    assertEquals(0.010, taper(computed, "pin").asDouble(), NANOMETRE);
  }

  @Test
  void taperFindsItsLargestAndSmallestAnywhereAlongTheBore() {
    SmallJob three = SmallJob.standard().with("[12.0, 60.0]", "[12.0, 36.0, 60.0]");
    Computed computed =
        Computed.of(
            three,
            Sitting.ofBores(three)
                .opening(0)
                .bores(12, 0.010, 0.030)
                .bores(36, 0.045, 0.005)
                .bores(60, 0.020, 0.025)
                .closing(0));

    assertEquals(0.035, taper(computed, "thrust").asDouble(), NANOMETRE);
    assertEquals(0.025, taper(computed, "pin").asDouble(), NANOMETRE);
  }

  @Test
  void anAxisReadAtFewerThanTwoOfSeveralDepthsHasNoTaperYet() {
    Computed computed =
        Computed.of(
            job,
            Sitting.ofBores(job)
                .opening(0)
                .bores(12, 0.040, 0.015)
                .bore(60, "thrust", 0.010)
                .closing(0));

    assertEquals(0.030, taper(computed, "thrust").asDouble(), NANOMETRE);
    assertTrue(taper(computed, "pin").isNull());
  }

  @Test
  void outOfRoundIsTheLargestLessTheSmallestAcrossTheAxesAtEachDepth() {
    SmallJob four = job.with("[\"thrust\", \"pin\"]", "[\"thrust\", \"a\", \"pin\", \"b\"]");
    Sitting sitting = Sitting.ofBores(four).opening(0);
    double[][] deviationsMm = {{0.010, 0.020, 0.015, 0.012}, {0.008, 0.001, 0.002, 0.007}};
    double[] depthsMm = {12, 60};
    String[] axes = {"thrust", "a", "pin", "b"};
    for (int depth = 0; depth < 2; depth++) {
      for (int axis = 0; axis < 4; axis++) {
        sitting.bore(depthsMm[depth], axes[axis], deviationsMm[depth][axis]);
      }
    }

    Computed computed = Computed.of(four, sitting.closing(0));

    assertEquals(0.010, outOfRound(computed, 0).asDouble(), NANOMETRE);
    assertEquals(0.007, outOfRound(computed, 1).asDouble(), NANOMETRE);
  }

  @Test
  void aDepthThatLacksAnAxisHasNoOutOfRoundYet() {
    Computed computed =
        Computed.of(
            job,
            Sitting.ofBores(job)
                .opening(0)
                .bore(12, "pin", 0.040)
                .bores(60, 0.010, 0.025)
                .closing(0));

    assertTrue(outOfRound(computed, 0).isNull());
    assertEquals(0.015, outOfRound(computed, 1).asDouble(), NANOMETRE);
  }

  @Test
  void aSingleAxisShowsNoOutOfRound() {
    SmallJob single = job.with("[\"thrust\", \"pin\"]", "[\"thrust\"]");
    Computed computed =
        Computed.of(
            single,
            Sitting.ofBores(single)
                .opening(0)
                .bore(12, "thrust", 0.040)
                .bore(60, "thrust", 0.010)
                .closing(0));

    assertTrue(outOfRound(computed, 0).isNull());
    assertEquals(0.030, taper(computed, "thrust").asDouble(), NANOMETRE);
    assertTrue(computed.check("out-of-round").isMissingNode());
  }

  @Test
  void aDriftOfTheZeroIsTakenOutBeforeDiametersAreCompared() {
    // Read at 20, 30, 40 and 50 s while the zero runs from 0 at 10 s to 0.005 mm at 60 s.
    Computed computed =
        Computed.of(
            job,
            Sitting.ofBores(job)
                .opening(0)
                .bores(12, 0.021, 0.022)
                .bores(60, 0.023, 0.024)
                .closing(0.005));

    assertEquals(0, taper(computed, "thrust").asDouble(), NANOMETRE);
    assertEquals(0, outOfRound(computed, 1).asDouble(), NANOMETRE);
  }

  private static JsonNode taper(Computed computed, String axis) {
    return computed.bore().path("taper_mm").path(axis);
  }

  private static JsonNode outOfRound(Computed computed, int depth) {
    return computed.bore().path("out_of_round_mm").path(depth).path("value_mm");
  }
}
