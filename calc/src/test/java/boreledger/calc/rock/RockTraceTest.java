package boreledger.calc.rock;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class RockTraceTest {
  private static final double[] TIMES_S = {0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9};

  private static RockTrace trace(double... yMm) {
    return new RockTrace(TIMES_S.clone(), yMm);
  }

  @Test
  void onlyFiniteSamplesThatRunForwardAreTakenOverAndTheLastOfOneTime() {
    RockTrace trace =
        RockTrace.of(
            List.of(
                new RockSample(1, 5),
                new RockSample(1, 6),
                new RockSample(Double.NaN, 7),
                new RockSample(2, Double.POSITIVE_INFINITY),
                new RockSample(0.5, 8),
                new RockSample(3, 9)));
    assertArrayEquals(new double[] {1, 3}, trace.tS());
    assertArrayEquals(new double[] {6, 9}, trace.yMm());
    assertEquals(2, trace.durationS());
  }

  @Test
  void medianGapIsTheMiddleOne() {
    assertEquals(
        0.3, new RockTrace(new double[] {0, 0.1, 0.4, 1.4}, new double[4]).medianGapS(), 1e-15);
  }

  @Test
  void thinningKeepsSamplesAtLeastTheSpacingApart() {
    RockTrace thin = trace(0, 1, 2, 3, 4, 5, 6, 7, 8, 9).thinned(0.25);
    assertArrayEquals(new double[] {0, 3, 6, 9}, thin.yMm());
    assertArrayEquals(new double[] {0, 0.3, 0.6, 0.9}, thin.tS());
  }

  @Test
  void betweenIncludesBothEnds() {
    RockTrace part = trace(0, 1, 2, 3, 4, 5, 6, 7, 8, 9).between(0.2, 0.5);
    assertArrayEquals(new double[] {2, 3, 4, 5}, part.yMm());
    assertArrayEquals(new double[] {0.2, 0.3, 0.4, 0.5}, part.tS());
  }

  @Test
  void betweenMayBeEmpty() {
    assertEquals(0, trace(0, 1, 2, 3, 4, 5, 6, 7, 8, 9).between(2, 1).size());
  }

  @Test
  void localMinimaAreSortedAndTheEndsAreNone() {
    assertArrayEquals(
        new double[] {1, 1, 2, 5}, trace(0, 5, 5, 9, 2, 3, 1, 1, 7, 0).localMinimaMm());
  }

  @Test
  void neitherEndIsALocalMinimum() {
    RockTrace trace = trace(0, 5, 5, 9, 2, 3, 1, 1, 7, 0);
    assertFalse(trace.isLocalMinimum(0));
    assertFalse(trace.isLocalMinimum(9));
    assertTrue(trace.isLocalMinimum(4));
  }

  @Test
  void thinningKeepsSamplesExactlyTheSpacingApart() {
    double[] quartersS = {0, 0.25, 0.5, 0.75};
    assertEquals(4, new RockTrace(quartersS, new double[4]).thinned(0.25).size());
  }

  @Test
  void aValueThatHoldsForAQuarterSecondIsSteady() {
    double[] eighthsS = {0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75};
    RockTrace trace = new RockTrace(eighthsS, new double[] {7, 7, 7, 1, 3, 2, 4});
    assertArrayEquals(new double[] {1, 3, 2, 4}, trace.withoutSteadyEnds(0.2).yMm());
  }

  @Test
  void aRecordThatIsSteadyAsSeenFromOneEndLeavesNothing() {
    double[] yMm = {0, -0.2, -0.2, -0.2, -0.2, -0.2, -0.2, -0.2, -0.2, 0.2};
    assertEquals(0, trace(yMm).withoutSteadyEnds(0.2).size());
  }

  @Test
  void steadyEndsAreLeftOffWithAGlitchAmongThem() {
    RockTrace rest = trace(7, 7.1, 99, 6.9, 3, 4, 5, 5, 5, 5).withoutSteadyEnds(0.2);
    assertArrayEquals(new double[] {3, 4}, rest.yMm());
  }

  @Test
  void aValueThatHoldsForLessThanAQuarterSecondStays() {
    RockTrace whole = trace(7, 7, 7, 3, 2, 3, 4, 5, 5, 5);
    assertArrayEquals(whole.yMm(), whole.withoutSteadyEnds(0.2).yMm());
  }

  @Test
  void aSteadyRecordLeavesNothing() {
    assertEquals(0, trace(1, 1, 1, 1, 1, 1, 1, 1, 1, 1).withoutSteadyEnds(0).size());
    assertEquals(0, RockTrace.of(List.of()).withoutSteadyEnds(1).size());
  }
}
