package boreledger.station.bench.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.Gauges;
import boreledger.station.bench.Jobs;
import boreledger.station.bench.model.Grid.State;
import boreledger.station.bench.tone.Tones;
import boreledger.station.bench.voice.Voice;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.plan.Position;
import java.util.List;
import org.junit.jupiter.api.Test;

class PicturesTest extends BenchFixture {
  /** Thrust lies across the crankshaft, the pin along it: common practice, no source. */
  @Test
  void axesAreSpacedEvenlyFromTheOneThatIsKnown() {
    assertEquals(90, BlockPicture.axisDeg(List.of("thrust", "pin"), "thrust"));
    assertEquals(0, BlockPicture.axisDeg(List.of("thrust", "pin"), "pin"));
    assertEquals(0, BlockPicture.axisDeg(List.of("pin", "thrust"), "pin"));
    assertEquals(90, BlockPicture.axisDeg(List.of("pin", "thrust"), "thrust"));
    assertEquals(45, BlockPicture.axisDeg(List.of("pin", "a", "b", "c"), "a"));
    assertEquals(90, BlockPicture.axisDeg(List.of("x", "y", "z"), "x"));
    assertEquals(150, BlockPicture.axisDeg(List.of("x", "y", "z"), "y"));
    assertEquals(30, BlockPicture.axisDeg(List.of("x", "y", "z"), "z"));
  }

  @Test
  void theBlockMarksTheBoreAndTheAxisToGauge() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(10, 0.01);

    BlockPicture block = shown().block().get();
    assertEquals(
        List.of(
            new BlockPicture.Bore(1, 6, 6, false, new Position.Bore(1, 12, "thrust")),
            new BlockPicture.Bore(2, 3, 6, true, new Position.Bore(2, 60, "pin")),
            new BlockPicture.Bore(3, 0, 6, false, new Position.Bore(3, 12, "thrust"))),
        block.bores());
    assertEquals(0, block.axisDeg());
    assertEquals("", block.note());
    assertEquals(
        "The block from above, with the place to gauge: cylinder 2, 60 mm, pin axis",
        block.spoken());
  }

  @Test
  void noBoreIsMarkedOnTheSetting() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());

    assertTrue(shown().block().get().bores().stream().noneMatch(BlockPicture.Bore::now));
    assertNull(shown().block().get().axisDeg());
    assertEquals(SectionPicture.Kind.SETTING, shown().section().get().kind());
    assertEquals("96.0020 mm", shown().section().get().setting());
  }

  @Test
  void blocksWithTwoBanksSayThatTheNumberCounts() throws LedgerFault {
    run.beginBores(Jobs.millHouse(), Gauges.settled());

    assertEquals("Go by the number: banks are drawn odd and even", shown().block().get().note());
  }

  @Test
  void theSectionShowsTheDepthsDoneAndTheOneToGauge() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(4, 0.01);

    SectionPicture section = shown().section().get();
    assertEquals(SectionPicture.Kind.BORE, section.kind());
    assertEquals("Along the pin axis", section.caption());
    assertEquals(
        List.of(
            new SectionPicture.Depth(12, "12 mm", State.TAKEN),
            new SectionPicture.Depth(60, "60 mm", State.NOW),
            new SectionPicture.Depth(108, "108 mm", State.OPEN)),
        section.depths());
    assertTrue(section.lengthMm() > 117.5, "reaches below the lowest ring's travel");
  }

  @Test
  void theSectionOfAGapSessionShowsARing() throws LedgerFault {
    run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");

    assertEquals(SectionPicture.Kind.RING, shown().section().get().kind());
    assertEquals("Cylinder 1 from the side: 0 of 3 depths done", shown().section().get().spoken());
  }

  @Test
  void theProgressIsToldCylinderByCylinder() throws LedgerFault {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    run.offerUntil(9, 0.01);

    PlanProgress progress = shown().progress().get();
    assertEquals("9 of 20 readings", progress.words());
    assertEquals(
        List.of("Setting 1/2", "1 6/6", "2 2/6 now", "3 0/6"),
        progress.parts().stream()
            .map(each -> each.label() + " " + each.count() + (each.now() ? " now" : ""))
            .toList());
    assertEquals("Cylinder 2: 2 of 6 readings taken", progress.parts().get(2).spoken());
  }

  @Test
  void theGridOfAGapSessionFillsWithTheGapsRead() throws LedgerFault {
    run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");
    run.offerUntil(2, 0.48, 0.46);

    Grid grid = shown().grid().get();
    assertEquals(List.of("gap"), grid.columns());
    assertEquals(List.of("0.4800", "0.4600", "now"), words(grid, 0));
    assertEquals(
        List.of("12 mm", "60 mm", "108 mm"), grid.rows().stream().map(Grid.Row::depth).toList());
  }

  @Test
  void theGridOfRingDepthsHasAColumnPerClockPosition() throws LedgerFault {
    run.beginRingDepths(Jobs.pumphouse(), Gauges.pressed(), "top");
    run.offerUntil(2, 12.25, 12.5);

    Grid grid = shown().grid().get();
    assertEquals(List.of("0\u00b0", "90\u00b0", "180\u00b0", "270\u00b0"), grid.columns());
    assertEquals("12.2500", grid.rows().get(0).cells().get(0).words());
    assertEquals("12.5000", grid.rows().get(0).cells().get(1).words());
  }

  @Test
  void aReadingWhoseValueIsNotComputedYetIsMarkedAsTaken() throws LedgerFault {
    BenchModel waiting =
        new BenchModel(
            new BenchServices(run, run, Tones.SILENT, Voice.SILENT),
            Runnable::run,
            task -> {},
            () -> nowS);
    run.watch(waiting::accept);
    run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "top");
    run.offer(0.48);

    assertEquals(List.of("taken", "now", ""), words(waiting.shown().grid().get(), 0));
  }

  private static List<String> words(Grid grid, int column) {
    return grid.rows().stream().map(row -> row.cells().get(column).words()).toList();
  }
}
