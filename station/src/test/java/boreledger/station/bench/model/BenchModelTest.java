package boreledger.station.bench.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.Gauges;
import boreledger.station.bench.Jobs;
import boreledger.station.bench.tone.Tones;
import boreledger.station.bench.voice.Voice;
import boreledger.station.bench.words.Lengths;
import boreledger.station.gauging.Ending;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.gauging.GaugingEvent.Progress;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.plan.Position;
import boreledger.station.session.Outcome;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class BenchModelTest extends BenchFixture {
  @Test
  void beforeAnySessionItSaysSo() {
    assertEquals("Ready", shown().place().get().title());
    assertEquals("No session yet", shown().heading().get().gauged());
    assertEquals("No line yet", shown().line().get().words());
    assertEquals("No value from the gauge yet", shown().live().get().caption());
    assertNull(shown().closing().get());
  }

  @Test
  void timePassesBeforeAnySessionToo() {
    model.tick();

    assertEquals(LineHealth.none(), shown().line().get());
  }

  @Test
  void beginningNamesTheJobTheGaugeAndTheFirstPlace() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());

    assertEquals(
        new Heading("Pumphouse three", "Bore diameters", "Signed decimal line, rocked"),
        shown().heading().get());
    Place place = shown().place().get();
    assertEquals("Setting ring", place.title());
    assertEquals("Opening check on 96.0020 mm", place.detail());
    assertEquals("Rock through the smallest value, then lift out", place.hint());
    assertEquals("0 of 20 readings", shown().progress().get().words());
    assertEquals("No reading taken yet in this sitting", saying().words());
  }

  @Test
  void theBoresPlaceIsNamedByCylinderDepthAndAxis() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(9, 0.01);

    assertEquals("Cylinder 2", shown().place().get().title());
    assertEquals("60 mm below the deck, thrust axis", shown().place().get().detail());
  }

  @Test
  void theGapsPlaceIsNamedByRing() throws LedgerFault {
    run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "second");

    assertEquals("End gaps, second ring", shown().heading().get().gauged());
    assertEquals("Cylinder 1", shown().place().get().title());
    assertEquals("12 mm below the deck, second ring gap", shown().place().get().detail());
    assertEquals("Press the gauge's send key when it sits well", shown().place().get().hint());
  }

  @Test
  void theRingDepthsPlaceIsNamedByClockPosition() throws LedgerFault {
    run.beginRingDepths(Jobs.pumphouse(), Gauges.settled(), "top");
    run.offerUntil(3, 12.5);

    assertEquals(
        "Near 12 mm below the deck, top ring, clock 270\u00b0", shown().place().get().detail());
    assertEquals("Hold the gauge still until the tone", shown().place().get().hint());
  }

  @Nested
  class AReading {
    @Test
    void isAnnouncedWithItsPlaceAndValueAndATone() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.offerUntil(9, 0.001);
      run.offer(0.013);

      assertEquals(Saying.Kind.TAKEN, saying().kind());
      assertEquals("Taken: cylinder 2, 60 mm, thrust axis, +0.0130 mm", saying().words());
      assertEquals(10, heard.size());
      assertEquals(List.of("taken"), heard.stream().distinct().toList());
      assertEquals("60 mm below the deck, pin axis", shown().place().get().detail());
    }

    @Test
    void bringsItsCautionsWithIt() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.offer(0.001, "the key may be stuck");

      assertEquals("Taken: setting, opening check, +0.0010 mm", saying().words());
      assertEquals(List.of("the key may be stuck"), saying().cautions());
    }

    @Test
    void standsInTheGridAsTheDiameterComputedFromIt() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.offer(0.0);
      run.offer(0.0193);

      Double diameterMm =
          run.results().orElseThrow().cylinders().get(0).bore().positions().get(0).diameterMm();
      assertNotNull(diameterMm);
      Grid.Cell cell = shown().grid().get().rows().get(0).cells().get(0);
      assertEquals(Grid.State.TAKEN, cell.state());
      assertEquals(new Lengths(Jobs.pumphouse().displayUnit()).number(diameterMm), cell.words());
      // 96.002 + 0.0193 mm, less the 1 µm or so by which a block at 21.3 °C has grown.
      assertEquals(96.0213, diameterMm, 0.002);
      assertEquals("cylinder 1, 12 mm, thrust axis: " + cell.words(), cell.spoken());
    }

    @Test
    void isSilentWhenMuted() throws LedgerFault {
      model.mutedProperty().set(true);
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.offer(0.001);
      run.notPicked("1 rock seen, 3 needed");

      assertEquals(List.of(), heard);
    }
  }

  @Test
  void theTimeLeftIsSaidFromTheThirdReadingOnUntilNothingIsLeft() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    for (int done = 1; done <= 20; done++) {
      run.offerUntil(done, 0.013);
      String left = shown().progress().get().left();
      if (done < 3 || done == 20) {
        assertEquals("", left, "after " + done);
      } else if (done == 8) {
        // 12 readings of 30 s each.
        assertEquals("about 6 min left", left);
      } else {
        assertFalse(left.isEmpty(), "after " + done);
      }
      nowS += 30;
    }
  }

  @Nested
  class ATakeBack {
    @Test
    void isAnnouncedWithATonePerChangeOfMind() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.offerUntil(2, 0.013);
      heard.clear();
      Position here = new Position.Bore(1, 12.0, "thrust");
      Progress before = new Progress(here, 1, 20);
      model.accept(new GaugingEvent.Said(new Outcome.TakenBack(3, here, 0.013), before));

      assertEquals(Saying.Kind.TAKEN_BACK, saying().kind());
      assertEquals(
          "Taken back: cylinder 1, 12 mm, thrust axis, +0.0130 mm. Press in free air again to"
              + " restore it",
          saying().words());
      assertEquals(List.of("taken back"), heard);

      Outcome restored = new Outcome.Restored(3, here, 0.013, run.progress().next());
      model.accept(new GaugingEvent.Said(restored, run.progress()));
      assertEquals(Saying.Kind.TAKEN, saying().kind());
      assertEquals(List.of("taken back", "taken"), heard);
    }
  }

  @Nested
  class SpokenWords {
    @BeforeEach
    void wanted() {
      model.spokenProperty().set(true);
    }

    @Test
    void areNotSaidUnlessWanted() throws LedgerFault {
      model.spokenProperty().set(false);
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.offer(0.001);

      assertEquals(List.of(), said);
    }

    @Test
    void nameTheNextPlaceAfterEachReading() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.offer(0.001);

      assertEquals(
          List.of(
              "Setting ring, Opening check on 96.0020 millimetres.",
              "Cylinder 1, 12 millimetres below the deck, thrust axis."),
          said);
    }

    @Test
    void beginWithTheReadingsCautions() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.offer(0.001, "the key may be stuck, 5 equal values in a row");

      assertEquals(
          "Caution: the key may be stuck, 5 equal values in a row. Cylinder 1, 12 millimetres"
              + " below the deck, thrust axis.",
          said.get(1));
    }

    @Test
    void askAboutAHeldValue() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.offerUntil(1, 0.001);
      run.offer(1.51);

      assertTrue(
          said.get(2)
              .startsWith(
                  "97.5120 millimetres is far from the nominal 96.0000 millimetres. Take it"
                      + " anyway?"),
          said::toString);
    }

    @Test
    void tellOfALineThatWentAway() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      model.accept(new GaugingEvent.LineGone("plug the adapter in again", run.progress()));

      assertEquals("Line gone: plug the adapter in again.", said.get(1));
    }
  }

  @Nested
  class ARefusal {
    @Test
    void isAnnouncedCountedAndSoundsDifferent() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.notPicked("2 rocks seen, 3 needed");
      run.notPicked("1 rock seen, 3 needed");

      assertEquals(Saying.Kind.NOT_TAKEN, saying().kind());
      assertEquals("Not taken: 1 rock seen, 3 needed", saying().words());
      assertEquals("2 refused, last: 1 rock seen, 3 needed", shown().line().get().refused());
      assertEquals(List.of("look at me", "look at me"), heard);
      assertEquals("Setting ring", shown().place().get().title());
    }

    @Test
    void isCountedAnewInTheNextSession() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.notPicked("1 rock seen, 3 needed");
      run.over(Ending.LINE_ENDED);
      run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");

      assertEquals("Nothing refused", shown().line().get().refused());
    }
  }

  @Nested
  class ALiveValue {
    @Test
    void ofADeviationGaugeHasItsSignAndTheSizeItMeans() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.live(0.013);

      assertEquals(
          new LiveValue(
              "Deviation from the setting", true, "+", "0.0130", "mm", "Size 96.0150 mm", true),
          shown().live().get());
    }

    @Test
    void ofASizeGaugeHasNeither() throws LedgerFault {
      run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");
      run.live(0.48);

      assertEquals(
          new LiveValue("End gap", false, "", "0.4800", "mm", "", true), shown().live().get());
    }

    @Test
    void ofAJobInInchesIsShownInInches() throws LedgerFault {
      run.beginBores(Jobs.inches(), Gauges.rocked());
      run.live(-0.0254);

      // 96.002 - 0.0254 = 95.9766 mm, over 25.4 mm to the inch.
      assertEquals("\u22120.00100 in", shown().live().get().words());
      assertEquals("Size 3.77861 in", shown().live().get().size());
    }

    @Test
    void growsOldInWords() throws LedgerFault {
      run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");
      run.live(0.48);
      nowS += 1.9;
      model.tick();
      assertTrue(shown().live().get().live());
      assertEquals("Receiving, last sample just now", shown().line().get().words());

      nowS += 5.2;
      model.tick();
      assertFalse(shown().live().get().live());
      assertEquals("End gap, last value 7 s ago", shown().live().get().caption());
      assertEquals("Quiet, last sample 7 s ago", shown().line().get().words());

      nowS += 180;
      model.tick();
      assertEquals("Quiet, last sample 3 min ago", shown().line().get().words());
    }

    @Test
    void ofTheSessionBeforeIsNotShown() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.live(0.013);
      run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");

      assertEquals("No value from the gauge yet", shown().live().get().caption());
      assertEquals("Line is up, no sample yet", shown().line().get().words());
    }
  }

  @Nested
  class TheEnd {
    @Test
    void ofThePlanSaysSoWithEveryCylindersVerdict() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.offerUntil(20, 0.013);
      run.over(Ending.PLAN_DONE);

      Closing closing = shown().closing().get();
      assertEquals("Plan done", closing.title());
      assertEquals("Every position has its reading", closing.detail());
      assertEquals(
          List.of("Cylinder 1", "Cylinder 2", "Cylinder 3"),
          closing.verdicts().stream().map(Verdict::title).toList());
      assertEquals("20 of 20 readings", shown().progress().get().words());
      assertEquals("Nothing left", shown().place().get().title());
      assertEquals(LineHealth.State.ENDED, shown().line().get().state());
    }

    @Test
    void ofTheLineNamesThePlaceThatStillWaits() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.offerUntil(3, 0.013);
      run.over(Ending.LINE_ENDED);

      assertEquals("Line ended", shown().closing().get().title());
      assertEquals(
          "Still waiting: cylinder 1, 60 mm, thrust axis", shown().closing().get().detail());
    }

    @Test
    void byABrokenLineSaysThatTheSessionCanBeResumed() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.over(Ending.LINE_BROKE);

      assertEquals("Line broke", shown().closing().get().title());
      assertEquals(
          "The session can be resumed. Still waiting: setting, opening check",
          shown().closing().get().detail());
      assertEquals(LineHealth.State.BROKE, shown().line().get().state());
      assertEquals("Line broke", shown().line().get().words());
    }

    @Test
    void byAPersonSaysThatTheSessionCanBeResumed() throws LedgerFault {
      run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");
      run.over(Ending.STOPPED);

      assertEquals("Stopped", shown().closing().get().title());
      assertEquals(
          "The session can be resumed. Still waiting: cylinder 1, top ring, 12 mm",
          shown().closing().get().detail());
      assertEquals("Line closed", shown().line().get().words());
    }

    @Test
    void byABrokenLineTellsWhyWhenThatIsKnown() throws LedgerFault {
      run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");
      run.over(Ending.LINE_BROKE);
      model.fail("The port is gone; plug the adapter in again");

      assertEquals("Line broke", shown().closing().get().title());
      assertEquals(
          "The port is gone; plug the adapter in again. The session can be resumed. Still waiting:"
              + " cylinder 1, top ring, 12 mm",
          shown().closing().get().detail());
      assertEquals("Stopped: The port is gone; plug the adapter in again", saying().words());
      assertEquals(Saying.Kind.NOT_TAKEN, saying().kind());
    }

    @Test
    void byAFaultThatNoEventToldIsAnEndToo() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.offer(1.51);
      heard.clear();
      model.fail("bench.db cannot be written: the disk is full");

      assertEquals("Stopped", shown().closing().get().title());
      assertEquals(LineHealth.State.ENDED, shown().line().get().state());
      assertNull(shown().question().get());
      assertEquals(List.of("look at me"), heard);
    }

    @Test
    void beforeAnySessionBeganIsTold() {
      model.fail("no such port: /dev/ttyUSB9");

      assertEquals("Stopped: no such port: /dev/ttyUSB9", saying().words());
      assertNull(shown().closing().get());
    }

    @Test
    void isGoneWhenTheNextSessionBegins() throws LedgerFault {
      run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      run.offerUntil(20, 0.013);
      run.over(Ending.PLAN_DONE);
      run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");

      assertNull(shown().closing().get());
      assertEquals("Cylinder 1 top ring gaps, mm", shown().grid().get().title());
      assertEquals("0 of 9 readings", shown().progress().get().words());
      assertEquals("No reading taken yet in this sitting", saying().words());
    }
  }

  @Test
  void notesOnTheLineStandBesideItsName() throws LedgerFault {
    run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");
    GaugingEvent.Began began = run.resumed();
    model.accept(
        new GaugingEvent.Began(
            began.start(),
            began.session(),
            false,
            List.of("no modem lines", "7 data bits"),
            began.progress()));

    assertEquals(
        "practice line, 9600 baud (no modem lines; 7 data bits)", shown().line().get().source());
  }

  @Test
  void resultsThatCannotBeComputedAreACautionAndGaugingGoesOn() throws LedgerFault {
    BenchModel unlucky =
        new BenchModel(
            new BenchServices(
                () -> {
                  throw new LedgerFault("bench.db cannot be read");
                },
                run,
                Tones.SILENT,
                Voice.SILENT),
            Runnable::run,
            Runnable::run,
            () -> nowS);
    run.watch(unlucky::accept);
    run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");
    run.offer(0.48, "the key may be stuck");

    String fault = "The results could not be computed: bench.db cannot be read";
    assertEquals(
        new Saying(
            Saying.Kind.TAKEN,
            "Taken: cylinder 1, top ring, 12 mm, 0.4800 mm",
            List.of("the key may be stuck", fault)),
        unlucky.shown().saying().get());
    assertEquals("1 of 9 readings", unlucky.shown().progress().get().words());
    run.over(Ending.STOPPED);
    assertEquals(List.of(fault), unlucky.shown().closing().get().cautions());
  }

  @Test
  void aResumedSessionShowsWhatIsDoneAlready() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(9, 0.013);
    GaugingEvent.Began again = run.resumed();
    model.accept(again);

    assertEquals("Bore diameters, resumed", shown().heading().get().gauged());
    assertEquals("9 of 20 readings", shown().progress().get().words());
    Grid grid = shown().grid().get();
    assertEquals("Cylinder 2 diameters, mm", grid.title());
    assertEquals(Grid.State.TAKEN, grid.rows().get(0).cells().get(0).state());
    assertEquals(Grid.State.NOW, grid.rows().get(1).cells().get(0).state());
    assertEquals(Grid.State.OPEN, grid.rows().get(1).cells().get(1).state());
  }
}
