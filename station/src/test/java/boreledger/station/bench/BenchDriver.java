package boreledger.station.bench;

import boreledger.station.bench.model.BenchModel;
import boreledger.station.gauging.Ending;
import boreledger.station.ledger.LedgerFault;
import java.nio.file.Path;
import java.util.List;
import javafx.application.Platform;
import javafx.stage.Window;

/**
 * A program of its own that opens the bench as the rest of the program does: three sessions in a
 * row, told from a thread of their own, then the window is closed. Arguments: a folder for the
 * ledger, and the pause after each sample in milliseconds.
 */
public final class BenchDriver {
  private static final int SAMPLES_PER_READING = 60;

  private final ScriptedRun run;
  private final long pauseMs;

  private BenchDriver(Path folder, long pauseMs) throws LedgerFault {
    this.run = new ScriptedRun(folder);
    this.pauseMs = pauseMs;
  }

  /** Opens the bench. */
  public static void main(String[] arguments) throws LedgerFault {
    BenchDriver driver = new BenchDriver(Path.of(arguments[0]), Long.parseLong(arguments[1]));
    BenchApplication.show(
        new BenchWiring(driver.run, driver.run, driver::start, () -> System.out.println("closed")));
    driver.run.close();
    System.out.println("returned");
  }

  private void start(BenchModel model) {
    run.watch(model::accept);
    new Thread(() -> playAndClose(model), "run").start();
  }

  private void playAndClose(BenchModel model) {
    try {
      play();
      Platform.runLater(
          () -> {
            System.out.println("seen " + model.shown().closing().get().title());
            System.out.println("seen " + model.shown().progress().get().words());
            List.copyOf(Window.getWindows()).forEach(Window::hide);
          });
    } catch (LedgerFault | InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private void play() throws LedgerFault, InterruptedException {
    run.beginBores(Jobs.pumphouse(), Gauges.rocked());
    while (run.done() < run.planned()) {
      double smallestMm = 0.02 - 0.001 * (run.done() % 7);
      for (int i = 0; i < SAMPLES_PER_READING; i++) {
        run.rock(smallestMm, 1);
        Thread.sleep(pauseMs);
      }
      run.offer(smallestMm);
    }
    run.over(Ending.PLAN_DONE);
    Thread.sleep(100 * pauseMs);
    for (String ring : List.of("top", "second")) {
      run.beginGaps(Jobs.pumphouse(), Gauges.pressed(), ring);
      while (run.done() < run.planned()) {
        double gapMm = 0.48 - 0.04 * (run.done() % 3);
        run.live(gapMm);
        run.offer(gapMm);
        Thread.sleep(20 * pauseMs);
      }
      run.over(Ending.PLAN_DONE);
      Thread.sleep(100 * pauseMs);
    }
  }
}
