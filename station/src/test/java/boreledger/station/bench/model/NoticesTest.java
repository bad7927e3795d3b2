package boreledger.station.bench.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import boreledger.station.bench.Gauges;
import boreledger.station.bench.Jobs;
import boreledger.station.gauging.Ending;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.ledger.LedgerFault;
import java.util.List;
import org.junit.jupiter.api.Test;

class NoticesTest extends BenchFixture {
  private static final String CHANGED = "the gauge went from mm to in";

  @Test
  void whatIsNoticedIsShownAndSounds() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    model.accept(new GaugingEvent.Noticed(CHANGED));

    assertEquals(new Notice(Notice.Kind.CAUTION, "Caution: " + CHANGED), shown().notice().get());
    assertEquals(List.of("look at me"), heard);
  }

  @Test
  void aRefusalOrAReadingWithACautionLeavesTheNotice() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    model.accept(new GaugingEvent.Noticed(CHANGED));
    run.notPicked("1 rock seen, 3 needed");
    run.offer(0.001, CHANGED);

    assertEquals("Caution: " + CHANGED, shown().notice().get().words());
  }

  @Test
  void aReadingThatNothingIsSaidAgainstClearsIt() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    model.accept(new GaugingEvent.Noticed(CHANGED));
    run.offer(0.001);

    assertNull(shown().notice().get());
  }

  @Test
  void theNextSessionBeginsWithoutIt() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    model.accept(new GaugingEvent.Noticed(CHANGED));
    run.over(Ending.STOPPED);
    assertEquals("Caution: " + CHANGED, shown().notice().get().words());
    run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");

    assertNull(shown().notice().get());
  }

  @Test
  void aLineThatWentAwayIsWaitedForInWords() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.live(0.013);
    model.accept(
        new GaugingEvent.LineGone("the adapter was pulled; plug it in again", run.progress()));

    assertEquals(LineHealth.State.GONE, shown().line().get().state());
    assertEquals("Gone, waited for", shown().line().get().words());
    assertEquals(
        new Notice(Notice.Kind.LINE_GONE, "Line gone: the adapter was pulled; plug it in again"),
        shown().notice().get());
    assertEquals(List.of("look at me"), heard);
  }

  @Test
  void aLineThatIsBackSaysWhereItWasFound() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    model.accept(new GaugingEvent.LineGone("the adapter was pulled", run.progress()));
    model.accept(new GaugingEvent.LineBack("found again at /dev/ttyUSB1", run.progress()));

    assertEquals("Line is up, no sample yet", shown().line().get().words());
    assertEquals(
        new Notice(Notice.Kind.LINE_BACK, "Line is back: found again at /dev/ttyUSB1"),
        shown().notice().get());
    run.offer(0.001);
    assertNull(shown().notice().get());
  }

  @Test
  void nobodyWaitsForALineOnceTheRunIsOver() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    model.accept(new GaugingEvent.LineGone("the adapter was pulled", run.progress()));
    run.over(Ending.STOPPED);

    assertNull(shown().notice().get());
    assertEquals("Line closed", shown().line().get().words());
  }

  @Test
  void whatDoesNotWorkBesideTheGaugingIsSaidBeforeAnySessionToo() {
    model.caution("No program that speaks was found");

    assertEquals("Caution: No program that speaks was found", shown().notice().get().words());
  }
}
