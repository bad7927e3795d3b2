package boreledger.station.bench;

import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.BenchServices;
import boreledger.station.bench.tone.SineTones;
import boreledger.station.bench.view.BenchWindow;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import javafx.application.Application;
import javafx.stage.Stage;

/** The bench as a JavaFX application. It is started by {@link #show}, never as a main class. */
public final class BenchApplication extends Application {
  private static final double NANOS_PER_S = 1e9;
  private static final AtomicReference<BenchWiring> WIRING = new AtomicReference<>();

  private final ExecutorService background =
      new ThreadPoolExecutor(
          1,
          1,
          0,
          TimeUnit.SECONDS,
          new LinkedBlockingQueue<>(),
          BenchApplication::thread,
          // Once the window is closed, nobody waits for results.
          new ThreadPoolExecutor.DiscardPolicy());
  private final SineTones tones = new SineTones();
  private BenchWiring wiring;

  /** Called by JavaFX. */
  public BenchApplication() {}

  /**
   * Opens the window and returns when it is closed. The toolkit can be started once in a program's
   * life, so this can be called once.
   *
   * @throws IllegalStateException if the toolkit was started before
   * @throws UnsupportedOperationException if there is no display
   */
  public static void show(BenchWiring wiring) {
    if (!WIRING.compareAndSet(null, wiring)) {
      throw new IllegalStateException("the bench was opened before in this program run");
    }
    Application.launch(BenchApplication.class);
  }

  @Override
  public void start(Stage stage) {
    wiring = WIRING.get();
    BenchServices services = new BenchServices(wiring.results(), wiring.answers(), tones);
    BenchModel model =
        new BenchModel(
            services, new ScreenExecutor(), background, () -> System.nanoTime() / NANOS_PER_S);
    new BenchWindow(model, stage).show();
    wiring.ready().accept(model);
  }

  @Override
  public void stop() {
    wiring.closed().run();
    background.shutdown();
    tones.close();
  }

  private static Thread thread(Runnable task) {
    Thread thread = new Thread(task, "bench results");
    thread.setDaemon(true);
    return thread;
  }
}
