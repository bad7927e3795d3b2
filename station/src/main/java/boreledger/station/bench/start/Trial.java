package boreledger.station.bench.start;

import boreledger.station.bench.look.Surroundings;
import boreledger.station.bench.words.Text;
import java.nio.file.Path;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Listening to a gauge before gauging: the person presses its key and sees what arrives. */
public final class Trial {
  private static final int LINES = 12;

  private final StartServices services;
  private final Surroundings around;
  private final ObservableList<String> lines = FXCollections.observableArrayList();
  // Kept, since such a view forgets those who listen to it once nobody holds it.
  private final ObservableList<String> linesToSee = FXCollections.unmodifiableObservableList(lines);
  private final ReadOnlyBooleanWrapper listening = new ReadOnlyBooleanWrapper(false);
  private Runnable stop = () -> {};

  Trial(StartServices services, Surroundings around) {
    this.services = services;
    this.around = around;
  }

  /** Listens to a gauge on a port; a trial that goes on is ended first. */
  public void start(Path gauge, String port) {
    stop();
    lines.setAll(Text.START_PRESS_NOW.with());
    listening.set(true);
    around.background().execute(() -> listen(gauge, port));
  }

  /** Ends it. */
  public void stop() {
    stop.run();
    stop = () -> {};
    listening.set(false);
  }

  /** What was heard, the last line at the end. */
  public ObservableList<String> lines() {
    return linesToSee;
  }

  /** Whether it goes on. */
  public ReadOnlyBooleanProperty listening() {
    return listening.getReadOnlyProperty();
  }

  private void listen(Path gauge, String port) {
    try {
      Runnable end = services.listen(gauge, port, line -> around.screen().execute(() -> add(line)));
      around.screen().execute(() -> listensUntil(end));
    } catch (RuntimeException e) {
      throw e;
    } catch (Exception e) {
      around.screen().execute(() -> failed(e.getMessage()));
    }
  }

  private void listensUntil(Runnable end) {
    if (listening.get()) {
      stop = end;
    } else {
      end.run();
    }
  }

  private void failed(String why) {
    add(why);
    listening.set(false);
  }

  private void add(String line) {
    lines.add(line);
    while (lines.size() > LINES) {
      lines.remove(0);
    }
  }
}
