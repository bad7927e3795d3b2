package boreledger.station.results;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.session.SmallJob;
import org.junit.jupiter.api.Test;

class GaugeUsesTest {
  private static final String STROKE = "stroke_mm = 104.0\n";

  private final SmallJob plated =
      SmallJob.standard()
          .with(STROKE, STROKE + "condition = \"torque-plate\"\nmain_caps = \"torqued\"\n");
  private final SmallJob bare = SmallJob.standard().with(STROKE, STROKE + "condition = \"bare\"\n");

  @Test
  void aSessionTellsItsGaugeItsConditionsAndHowTheZeroHeld() {
    Sitting sitting = Sitting.ofBores(plated).opening(0.001).bores(12, 0, 0).closing(0.002);

    GaugeUse use = Computed.of(plated, sitting).results().gauges().get(0);

    assertEquals("bore", use.measure());
    assertEquals(sitting.gauge().name(), use.gauge());
    assertEquals(sitting.gauge().source().sha256(), use.profile());
    assertEquals("torque plate on, main caps torqued", use.conditions().words());
    assertEquals(0.001, use.openingMm());
    assertEquals(0.002, use.closingMm());
    assertEquals(0.001, use.driftMm(), 1e-12);
  }

  @Test
  void withoutAClosingCheckThereIsNoDrift() {
    Sitting sitting = Sitting.ofBores(plated).opening(0.001);

    GaugeUse use = Computed.of(plated, sitting).results().gauges().get(0);

    assertNull(use.closingMm());
    assertNull(use.driftMm());
  }

  @Test
  void boresAndGapsOfUnlikeConditionsAreNotComparedWithoutACaution() {
    Computed computed =
        Computed.of(bare, bores(plated), Sitting.ofGaps(bare).gap(12, 0.5).gap(60, 0.5));

    assertTrue(computed.warnsOf("do not compare"), computed.cautions()::toString);
  }

  @Test
  void anEarlierSittingUnderOtherConditionsIsToldToo() {
    assertTrue(Computed.of(bare, bores(plated), bores(bare)).warnsOf("do not compare"));
  }

  @Test
  void whatOneJobDoesNotSayIsNoDifference() {
    Computed computed =
        Computed.of(plated, bores(SmallJob.standard()), Sitting.ofGaps(plated).gap(12, 0.5));

    assertFalse(computed.warnsOf("do not compare"));
  }

  private static Sitting bores(SmallJob job) {
    return Sitting.ofBores(job).opening(0).bores(12, 0, 0).bores(60, 0, 0).closing(0);
  }
}
