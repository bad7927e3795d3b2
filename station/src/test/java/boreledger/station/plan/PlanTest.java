package boreledger.station.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.drivers.capture.Measure;
import boreledger.station.job.Job;
import boreledger.station.plan.Position.Bore;
import boreledger.station.plan.Position.Gap;
import boreledger.station.plan.Position.RingDepth;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.SmallJob;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanTest {
  private final Job two = SmallJob.standard().with("cylinders = 1", "cylinders = 2").job();

  @Test
  void boresGoFromTheSettingRingCylinderByCylinderFromTheDeckDownAxisByAxisBackToIt() {
    assertEquals(
        List.of(
            SettingCheck.OPENING,
            new Bore(1, 12, "thrust"),
            new Bore(1, 12, "pin"),
            new Bore(1, 60, "thrust"),
            new Bore(1, 60, "pin"),
            new Bore(2, 12, "thrust"),
            new Bore(2, 12, "pin"),
            new Bore(2, 60, "thrust"),
            new Bore(2, 60, "pin"),
            SettingCheck.CLOSING),
        Plan.of(two, Measure.BORE, null));
  }

  @Test
  void axesGoInTheJobsOrderAndDepthsFromTheDeckDownHoweverTheyAreListed() {
    Job job =
        SmallJob.standard()
            .with("[\"thrust\", \"pin\"]", "[\"pin\", \"thrust\"]")
            .with("[12.0, 60.0]", "[60.0, 12.0]")
            .job();

    assertEquals(
        List.of(
            SettingCheck.OPENING,
            new Bore(1, 12, "pin"),
            new Bore(1, 12, "thrust"),
            new Bore(1, 60, "pin"),
            new Bore(1, 60, "thrust"),
            SettingCheck.CLOSING),
        Plan.of(job, Measure.BORE, null));
  }

  @Test
  void gapsGoCylinderByCylinderAndDepthByDepthWithoutASettingRing() {
    assertEquals(
        List.of(
            new Gap(1, "top", 12),
            new Gap(1, "top", 60),
            new Gap(2, "top", 12),
            new Gap(2, "top", 60)),
        Plan.of(two, Measure.GAP, two.rings().get(0)));
  }

  @Test
  void ringDepthsGoRoundTheClockAtEachGapDepth() {
    Job job =
        SmallJob.atOneDepth()
            .with("axes = [\"thrust\", \"pin\"]", "axes = [\"thrust\"]\nclock_deg = [0, 240, 120]")
            .job();

    assertEquals(
        List.of(
            new RingDepth(1, "top", 12, 0),
            new RingDepth(1, "top", 12, 240),
            new RingDepth(1, "top", 12, 120)),
        Plan.of(job, Measure.RING_DEPTH, job.rings().get(0)));
  }

  @Test
  void withoutClockPositionsInTheJobTheQuartersAreRead() {
    Job job = SmallJob.atOneDepth().job();

    assertEquals(
        List.of(0.0, 90.0, 180.0, 270.0),
        Plan.of(job, Measure.RING_DEPTH, job.rings().get(0)).stream()
            .map(position -> ((RingDepth) position).clockDeg())
            .toList());
  }
}
