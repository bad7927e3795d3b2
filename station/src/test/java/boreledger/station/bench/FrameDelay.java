package boreledger.station.bench;

import boreledger.station.bench.keys.KeyChoices;
import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.BenchServices;
import boreledger.station.bench.model.Saying;
import boreledger.station.bench.tone.Tones;
import boreledger.station.bench.view.BenchRoom;
import boreledger.station.bench.voice.Voice;
import boreledger.station.bench.window.StationWindow;
import boreledger.station.ledger.LedgerFault;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.stage.Stage;

/**
 * A measurement, no test: prints how long it takes from the commit of a reading, when the run tells
 * of it, to the end of the layout of the frame that shows it. Argument: a folder.
 */
public final class FrameDelay extends Application {
  private static final int WARM_UP = 40;
  private static final int READINGS = 240;
  private static final int PAUSE_MS = 97;

  private final LinkedBlockingQueue<Long> frames = new LinkedBlockingQueue<>();
  private boolean shown;

  /** Called by JavaFX. */
  public FrameDelay() {}

  /** Opens a window and takes readings in it. */
  public static void main(String[] arguments) {
    launch(FrameDelay.class, arguments);
  }

  @Override
  public void start(Stage stage) throws Exception {
    ScriptedRun run = new ScriptedRun(Path.of(getParameters().getRaw().get(0)));
    BenchModel model =
        new BenchModel(
            new BenchServices(run, run, Tones.SILENT, Voice.SILENT),
            Platform::runLater,
            Executors.newSingleThreadExecutor(
                task -> {
                  Thread thread = new Thread(task, "results");
                  thread.setDaemon(true);
                  return thread;
                }),
            () -> System.nanoTime() / 1e9);
    KeyChoices keys = new KeyChoices(new Memory(null));
    new StationWindow(model, List.of(BenchRoom.of(model, keys)), new Appearance(), stage).show();
    model
        .shown()
        .saying()
        .addListener((saying, before, now) -> shown |= now.kind() == Saying.Kind.TAKEN);
    stage.getScene().addPostLayoutPulseListener(this::laidOut);
    new Thread(() -> measure(run, model), "readings").start();
  }

  private void laidOut() {
    // Changes ask for a new layout themselves, so that the frame that comes is the one with them.
    if (shown) {
      shown = false;
      frames.offer(System.nanoTime());
    }
  }

  private void measure(ScriptedRun run, BenchModel model) {
    List<Double> delaysMs = new ArrayList<>();
    try {
      run.watch(model::accept);
      while (delaysMs.size() < WARM_UP + READINGS) {
        run.beginBores(Jobs.pumphouse(), Gauges.rocked());
        while (run.done() < run.planned()) {
          Thread.sleep(PAUSE_MS);
          frames.clear();
          long[] committedNs = new long[1];
          run.watch(
              event -> {
                committedNs[0] = System.nanoTime();
                model.accept(event);
              });
          run.offer(0.013);
          run.watch(model::accept);
          delaysMs.add((frames.take() - committedNs[0]) / 1e6);
        }
      }
    } catch (LedgerFault | InterruptedException e) {
      System.out.println("stopped: " + e);
    }
    List<Double> sorted = new ArrayList<>(delaysMs.subList(WARM_UP, delaysMs.size()));
    Collections.sort(sorted);
    System.out.printf(
        "readings %d, median %.1f ms, 95 %% %.1f ms, longest %.1f ms%n",
        sorted.size(),
        sorted.get(sorted.size() / 2),
        sorted.get(sorted.size() * 95 / 100),
        sorted.get(sorted.size() - 1));
    Platform.exit();
  }
}
