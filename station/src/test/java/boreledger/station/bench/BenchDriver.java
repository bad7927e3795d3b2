package boreledger.station.bench;

import boreledger.station.app.Play;
import boreledger.station.app.TypedValues;
import boreledger.station.app.Workshop;
import boreledger.station.gauging.Ending;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.results.JobResults;
import java.nio.file.Path;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.control.Labeled;
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
    Path ledger = Path.of(arguments[0]).resolve("bench.db");
    BenchApplication.show(
        new BenchWiring(
            new Workshop(ledger),
            driver::playAndClose,
            1,
            new TypedValues(),
            event -> {},
            desk -> System.out.println("opened")));
    driver.run.close();
    System.out.println("returned");
  }

  private JobResults playAndClose(Play play) throws LedgerFault, InterruptedException {
    run.watch(play.watcher());
    play();
    Platform.runLater(
        () -> {
          System.out.println("seen " + words("#closing-title"));
          System.out.println("seen " + words("#progress-words"));
          List.copyOf(Window.getWindows()).forEach(Window::hide);
        });
    return run.results().orElseThrow();
  }

  private static String words(String id) {
    return ((Labeled) Window.getWindows().get(0).getScene().lookup(id)).getText();
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
