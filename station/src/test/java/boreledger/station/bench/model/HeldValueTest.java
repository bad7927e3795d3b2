package boreledger.station.bench.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import boreledger.station.bench.Gauges;
import boreledger.station.bench.Jobs;
import boreledger.station.gauging.Ending;
import boreledger.station.ledger.LedgerFault;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class HeldValueTest extends BenchFixture {
  private static final String WHY =
      "bore 97.5120 mm is outside 95.5000 to 97.5000 mm; check the gauge, its unit and its"
          + " setting";

  @BeforeEach
  void holdAValue() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(1, 0.001);
    heard.clear();
    run.offer(1.51);
  }

  @Test
  void isAskedInPlainWords() {
    assertEquals(
        new Question("97.5120 mm is far from the nominal 96.0000 mm. Take it anyway?", WHY),
        shown().question().get());
    assertEquals("Held: cylinder 1, 12 mm, thrust axis, +1.5100 mm", saying().words());
    assertEquals(Saying.Kind.HELD, saying().kind());
    assertEquals(List.of("look at me"), heard);
    assertEquals("1 refused, last: " + WHY, shown().line().get().refused());
  }

  @Test
  void isTakenWithItsCautionOnceConfirmed() {
    model.confirmHeld();

    assertNull(shown().question().get());
    assertEquals("Taken: cylinder 1, 12 mm, thrust axis, +1.5100 mm", saying().words());
    assertEquals(List.of("confirmed at the bench although " + WHY), saying().cautions());
    assertEquals("12 mm below the deck, pin axis", shown().place().get().detail());
  }

  @Test
  void isSaidToBeOnItsWayUntilTheLedgerHasIt() {
    run.watch(event -> {});

    model.confirmHeld();

    assertEquals("Taking it anyway: cylinder 1, 12 mm, thrust axis, +1.5100 mm", saying().words());
    assertNull(shown().question().get());
  }

  @Test
  void leavesThePlaceWaitingWhenLeft() {
    model.leaveHeld();

    assertNull(shown().question().get());
    assertEquals(
        "Left: cylinder 1, 12 mm, thrust axis, +1.5100 mm. The position still waits",
        saying().words());
    assertEquals(1, run.left().size());
    assertEquals("12 mm below the deck, thrust axis", shown().place().get().detail());
  }

  @Test
  void isAnsweredOnce() {
    model.leaveHeld();
    model.leaveHeld();
    model.confirmHeld();

    assertEquals(1, run.left().size());
    assertEquals("1 of 20 readings", shown().progress().get().words());
  }

  @Test
  void givesWayToANewerHeldValue() throws LedgerFault {
    run.offer(1.7);
    model.confirmHeld();

    assertEquals("Taken: cylinder 1, 12 mm, thrust axis, +1.7000 mm", saying().words());
  }

  @Test
  void givesWayToANewerReading() throws LedgerFault {
    run.offer(0.02);
    model.confirmHeld();

    assertNull(shown().question().get());
    assertEquals("Taken: cylinder 1, 12 mm, thrust axis, +0.0200 mm", saying().words());
    assertEquals("2 of 20 readings", shown().progress().get().words());
  }

  @Test
  void outlastsNoiseOnTheLine() throws LedgerFault {
    run.notPicked("no number in it");
    model.confirmHeld();

    assertEquals("Taken: cylinder 1, 12 mm, thrust axis, +1.5100 mm", saying().words());
  }

  @Test
  void isNotAskedAnyMoreWhenTheRunIsOver() {
    run.over(Ending.STOPPED);
    model.confirmHeld();

    assertNull(shown().question().get());
    assertEquals("1 of 20 readings", shown().progress().get().words());
  }

  @Test
  void ofAGapIsHeldAgainstNoNominal() throws LedgerFault {
    run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");
    run.offer(5.2);

    assertEquals(
        "5.2000 mm is far from any likely end gap. Take it anyway?",
        shown().question().get().words());
  }

  @Test
  void ofARingDepthIsHeldAgainstNoNominal() throws LedgerFault {
    run.beginRingDepths(Jobs.pumphouse(), Gauges.pressed(), "top");
    run.offer(900);

    assertEquals(
        "900.0000 mm is far from any likely ring depth. Take it anyway?",
        shown().question().get().words());
  }
}
