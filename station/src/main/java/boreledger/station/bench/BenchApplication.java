package boreledger.station.bench;

import boreledger.station.app.FilingBook;
import boreledger.station.app.GaugingDesk;
import boreledger.station.app.Workshop;
import boreledger.station.bench.bores.BoresModel;
import boreledger.station.bench.bores.BoresRoom;
import boreledger.station.bench.findings.Findings;
import boreledger.station.bench.gaps.GapsModel;
import boreledger.station.bench.gaps.GapsRoom;
import boreledger.station.bench.keys.KeyChoices;
import boreledger.station.bench.ledger.LedgerRoom;
import boreledger.station.bench.look.Appearance;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.look.Surroundings;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.memory.RememberedLook;
import boreledger.station.bench.model.BenchModel;
import boreledger.station.bench.model.BenchServices;
import boreledger.station.bench.start.StartModel;
import boreledger.station.bench.start.StartRoom;
import boreledger.station.bench.tone.SineTones;
import boreledger.station.bench.view.BenchRoom;
import boreledger.station.bench.voice.SystemVoice;
import boreledger.station.bench.window.LazyRoom;
import boreledger.station.bench.window.StationWindow;
import boreledger.station.bench.window.TypedKeys;
import boreledger.station.bench.words.Language;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.WindowText;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.ledger.LedgerFault;
import boreledger.station.results.JobResults;
import java.io.IOException;
import java.lang.System.Logger.Level;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import javafx.application.Application;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** The station's window as a JavaFX application. It is started by {@link #show}. */
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
  private final ScreenExecutor screen = new ScreenExecutor();
  private final SineTones tones = new SineTones();
  private final SystemVoice voice = SystemVoice.here(why -> this.model.caution(why));
  private final Appearance appearance = new Appearance();
  private final Memory memory = Memory.ofThePerson();
  private final RememberedLook look = new RememberedLook(memory);
  // What the background sees of the workshop, which belongs to the screen's thread.
  private final AtomicReference<Workshop> asked = new AtomicReference<>();
  private BenchWiring wiring;
  private BenchModel model;
  private GaugingDesk desk;
  private StationWindow window;

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
    join(wiring);
    Application.launch(BenchApplication.class);
  }

  /** Says what the application is joined to, once, before it is started. */
  static void join(BenchWiring wiring) {
    if (!WIRING.compareAndSet(null, wiring)) {
      throw new IllegalStateException("the bench was opened before in this program run");
    }
  }

  @Override
  public void start(Stage stage) {
    wiring = WIRING.get();
    look.restore(appearance, Locale.getDefault(Locale.Category.DISPLAY));
    // Models say their first words when they are made.
    Language.speak(appearance.language().get());
    model =
        new BenchModel(
            new BenchServices(this::results, wish -> desk.wish(wish), tones, voice),
            screen,
            background,
            BenchApplication::nowS);
    look.rememberUnder("voice", model.spokenProperty());
    desk = new GaugingDesk(wiring.watcher().andThen(this::happened), this::failed);
    wiring.opened().accept(desk);
    appearance.unit().subscribe(model::showIn);
    window = new StationWindow(model, rooms(), appearance, stage);
    new TypedKeys(stage, wiring.typed(), BenchApplication::nowS);
    look.restore(stage, BenchApplication::canBeSeen);
    stage.setOnHiding(hiding -> look.keep(appearance, stage));
    window.show();
    if (wiring.first() != null) {
      window.go(BenchRoom.ID);
      desk.begin(wiring.first());
    }
  }

  @Override
  public void stop() {
    desk.stop();
    background.shutdown();
    tones.close();
    voice.close();
    remember();
  }

  private void happened(GaugingEvent event) {
    if (event instanceof GaugingEvent.Over) {
      wiring.typed().end();
    }
    model.accept(event);
  }

  private void failed(String why) {
    wiring.typed().end();
    model.fail(why);
  }

  private static double nowS() {
    return System.nanoTime() / NANOS_PER_S;
  }

  private List<Room> rooms() {
    ObjectProperty<Workshop> workshop = new SimpleObjectProperty<>(wiring.workshop());
    workshop.subscribe(
        now -> {
          asked.set(now);
          // Later: what computes them would keep the first window waiting.
          screen.execute(model::askForResults);
        });
    Surroundings around =
        new Surroundings(
            workshop,
            model.shown().results(),
            appearance,
            background,
            screen,
            room -> window.go(room));
    StartModel start =
        new StartModel(
            new StationStart(desk, wiring.typed()),
            around,
            memory,
            BenchRoom.ID,
            wiring.practicePace());
    Findings findings = new Findings(around);
    return List.of(
        StartRoom.of(start, appearance),
        LazyRoom.of(
            BenchRoom.ID,
            WindowText.ROOM_BENCH.with(),
            () -> BenchRoom.of(model, new KeyChoices(memory))),
        LazyRoom.of(
            BoresRoom.ID,
            WindowText.ROOM_BORES.with(),
            () -> BoresRoom.of(new BoresModel(findings, around))),
        LazyRoom.of(
            GapsRoom.ID,
            WindowText.ROOM_GAPS.with(),
            () -> GapsRoom.of(new GapsModel(findings, around, memory, this::filingBook))),
        LazyRoom.of(
            LedgerRoom.ID,
            LedgerText.ROOM.with(),
            () -> LedgerRoom.of(around, model::askForResults, desk::isBusy, desk)));
  }

  private Optional<JobResults> results() throws LedgerFault {
    Workshop workshop = asked.get();
    return workshop == null ? Optional.empty() : workshop.latestResults();
  }

  private FilingBook filingBook(Path ledger) {
    return new FilingBook(ledger, desk, Clock.systemUTC());
  }

  private void remember() {
    try {
      memory.save();
    } catch (IOException e) {
      System.Logger log = System.getLogger(BenchApplication.class.getName());
      log.log(Level.WARNING, "the window's place could not be remembered", e);
    }
  }

  private static boolean canBeSeen(double[] place) {
    return !Screen.getScreensForRectangle(place[0], place[1], place[2], place[3]).isEmpty();
  }

  private static Thread thread(Runnable task) {
    Thread thread = new Thread(task, "bench results");
    thread.setDaemon(true);
    return thread;
  }
}
