package boreledger.station.bench.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.pick.PickEvent;
import boreledger.station.bench.Gauges;
import boreledger.station.bench.Jobs;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingEvent.Progress;
import boreledger.station.job.DisplayUnit;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.plan.Position;
import boreledger.station.session.Outcome;
import boreledger.station.session.SessionStart;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class BesidesTest extends BenchFixture {
  private static final String NAME = "ring-depth top";
  private static final Position HERE = new Position.RingDepth(1, "top", 12.0, 180.0);
  private static final Position NEXT = new Position.RingDepth(1, "top", 12.0, 270.0);

  @BeforeEach
  void theMainGaugeIsAtWork() throws LedgerFault {
    run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");
  }

  @Test
  void aGaugeOfWhichOnlyValuesCameIsShownWithItsName() {
    beside(new GaugingEvent.Live(Gauges.sample(1, 15.412)));

    assertEquals(List.of(new Beside(false, "Beside: ring-depth top shows 15.4120 mm")), lines());
    assertEquals(List.of(), heard);
  }

  @Test
  void readingsAreCountedAndTheLastOneNamed() {
    begin();
    assertEquals("Beside: Ring depths, top ring \u2013 2 of 36", lines().get(0).words());

    take(15.412);

    assertEquals(
        List.of(new Beside(false, "Beside: Ring depths, top ring \u2013 3 of 36, last 15.4120 mm")),
        lines());
    assertEquals(List.of("taken"), heard);
  }

  @Test
  void aTakeBackIsSaidAndHasItsTone() {
    begin();
    take(15.412);
    beside(new GaugingEvent.Said(new Outcome.TakenBack(9, HERE, 15.412), progress(2)));

    assertEquals(
        List.of(
            new Beside(true, "Beside: Ring depths, top ring \u2013 2 of 36. Last one taken back")),
        lines());
    assertEquals(List.of("taken", "taken back"), heard);
  }

  @Test
  void aRefusalStandsUntilTheNextReading() {
    begin();
    beside(new GaugingEvent.Said(new Outcome.Refused(3, HERE, "no number"), progress(2)));
    assertEquals(
        "Beside: Ring depths, top ring \u2013 2 of 36. Not taken: no number",
        lines().get(0).words());

    take(15.412);

    assertEquals(
        "Beside: Ring depths, top ring \u2013 3 of 36, last 15.4120 mm", lines().get(0).words());
  }

  @Test
  void itsLineMayGoAndComeBack() {
    begin();
    beside(new GaugingEvent.LineGone("/dev/ttyUSB1 went away", progress(2)));
    assertEquals(
        new Beside(
            true,
            "Beside: Ring depths, top ring \u2013 2 of 36. Line gone: /dev/ttyUSB1 went away"),
        lines().get(0));

    beside(new GaugingEvent.LineBack("found again", progress(2)));

    assertEquals(new Beside(false, "Beside: Ring depths, top ring \u2013 2 of 36"), lines().get(0));
    assertEquals("Line is up, no sample yet", shown().line().get().words());
  }

  @Test
  void lengthsFollowTheUnitThatAPersonWants() {
    begin();
    take(15.412);
    model.showIn(DisplayUnit.IN);

    // 15.412 mm over 25.4 mm to the inch.
    assertEquals(
        "Beside: Ring depths, top ring \u2013 3 of 36, last 0.60677 in", lines().get(0).words());
  }

  @Test
  void theNextSessionBeginsWithoutThem() throws LedgerFault {
    begin();
    run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "second");

    assertEquals(List.of(), lines());
  }

  @Test
  void aHeldValueIsAskedAboutWithTheNameOfItsGauge() {
    begin();
    hold(900);
    assertEquals(
        new Question(
            "Ring depths, top ring: 900.0000 mm is far from any likely ring depth. Take it anyway?",
            "far off"),
        shown().question().get());

    take(15.412);

    assertNull(shown().question().get());
  }

  @Test
  void aHeldValueThatIsLeftIsAskedAboutNoMore() {
    begin();
    hold(900);
    model.leaveHeld();

    assertNull(shown().question().get());
    assertEquals(List.of(900.0), run.left().stream().map(each -> each.picked().valueMm()).toList());
  }

  @Test
  void theMainGaugesHeldValueIsAskedAboutFirst() throws LedgerFault {
    begin();
    hold(900);
    run.offer(5.2);
    assertEquals(
        "5.2000 mm is far from any likely end gap. Take it anyway?",
        shown().question().get().words());

    model.leaveHeld();

    assertTrue(shown().question().get().words().startsWith("Ring depths, top ring: 900"));
  }

  private void hold(double valueMm) {
    PickEvent.Picked picked =
        new PickEvent.Picked(3, valueMm, null, List.of(Gauges.sample(3, valueMm)), List.of());
    beside(new GaugingEvent.Said(new Outcome.Held(HERE, picked, "far off"), progress(2)));
  }

  private void begin() {
    SessionStart start = run.besideStart("top");
    beside(new GaugingEvent.Began(start, 7, true, List.of(), progress(2)));
  }

  private void take(double valueMm) {
    beside(
        new GaugingEvent.Said(new Outcome.Taken(9, HERE, valueMm, List.of(), NEXT), progress(3)));
  }

  private static Progress progress(int done) {
    return new Progress(NEXT, done, 36);
  }

  private void beside(GaugingEvent event) {
    model.accept(new GaugingEvent.Beside(NAME, event));
  }

  private List<Beside> lines() {
    return shown().besides().get();
  }
}
