package boreledger.station.bench.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.Gauges;
import boreledger.station.bench.Jobs;
import boreledger.station.bench.model.Grid.State;
import boreledger.station.ledger.LedgerFault;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whatever happens in whatever order, what is shown agrees with the session. */
class RandomSittingsTest extends BenchFixture {
  private static final int SEEDS = 12;
  private static final int STEPS = 60;

  private Random random;
  private boolean asked;

  @Test
  void whatIsShownAgreesWithTheSession() throws LedgerFault {
    int checked = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      random = new Random(seed);
      begin();
      for (int step = 0; step < STEPS; step++) {
        act();
        check("seed " + seed + ", step " + step);
        checked++;
      }
    }
    assertEquals(SEEDS * STEPS, checked);
  }

  private void begin() throws LedgerFault {
    asked = false;
    switch (random.nextInt(3)) {
      case 0 -> run.beginBores(Jobs.pumphouse(), Gauges.rocked());
      case 1 -> run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), "second");
      default -> run.beginRingDepths(Jobs.pumphouse(), Gauges.settled(), "top");
    }
  }

  private void act() throws LedgerFault {
    switch (random.nextInt(6)) {
      case 0 -> run.live(random.nextGaussian());
      case 1 -> run.notPicked("no number in it");
      case 2 -> {
        boolean waits = run.done() < run.planned();
        run.offer(1_000);
        asked |= waits;
      }
      case 3 -> {
        model.confirmHeld();
        asked = false;
      }
      case 4 -> {
        model.leaveHeld();
        asked = false;
      }
      default -> {
        boolean waits = run.done() < run.planned();
        run.offer(0.1 * random.nextDouble());
        asked &= !waits;
      }
    }
  }

  private void check(String where) {
    assertEquals(run.done() + " of " + run.planned() + " readings", progress().words(), where);
    int byParts = progress().parts().stream().mapToInt(PlanProgress.Part::done).sum();
    assertEquals(run.done(), byParts, where);
    assertEquals(asked, shown().question().get() != null, where);
    boolean waits = run.done() < run.planned();
    long now = cells(State.NOW);
    long inBlock = shown().block().get().bores().stream().filter(BlockPicture.Bore::now).count();
    assertEquals(inBlock, now, where);
    assertTrue(now <= (waits ? 1 : 0), where);
    assertEquals(!waits, shown().place().get().title().equals("Nothing left"), where);
  }

  private long cells(State state) {
    return shown().grid().get().rows().stream()
        .flatMap(row -> row.cells().stream())
        .filter(cell -> cell.state() == state)
        .count();
  }

  private PlanProgress progress() {
    return shown().progress().get();
  }
}
