package boreledger.station.cli;

import boreledger.station.app.FootSwitches;
import boreledger.station.app.GaugingDesk;
import boreledger.station.app.TypedValues;
import boreledger.station.app.Workshop;
import boreledger.station.bench.BenchApplication;
import boreledger.station.bench.BenchWiring;
import boreledger.station.gauging.GaugingEvent;
import boreledger.station.results.JobResults;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;

/** The station's window, opened from the command line. */
final class Window {
  private Window() {}

  /** Whether there is a display to open a window on. */
  static boolean canOpen() {
    boolean linux = System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("linux");
    String display = System.getenv("DISPLAY");
    return !linux || display != null && !display.isBlank();
  }

  /**
   * Opens the window and returns when it is closed.
   *
   * @param ledger the ledger that it shows
   * @param first what is gauged at once; null for nothing
   * @param typed takes what a gauge types into the window
   * @param watcher told everything that the window is told
   * @param switches heard as long as the window is open
   * @return what was gauged last; empty when nothing was
   * @throws Exception what the last gauging failed with
   */
  static Optional<JobResults> show(
      Path ledger,
      GaugingDesk.Work first,
      TypedValues typed,
      Consumer<GaugingEvent> watcher,
      FootSwitches switches)
      throws Exception {
    AtomicReference<GaugingDesk> opened = new AtomicReference<>();
    Consumer<GaugingDesk> hears =
        desk -> {
          opened.set(desk);
          switches.start(desk::wish, desk::notice);
        };
    BenchApplication.show(new BenchWiring(new Workshop(ledger), first, 1, typed, watcher, hears));
    return opened.get().lastResults();
  }
}
