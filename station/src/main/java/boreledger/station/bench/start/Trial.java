package boreledger.station.bench.start;

import boreledger.station.bench.look.Surroundings;
import boreledger.station.bench.words.StartText;
import java.nio.file.Path;
import java.util.function.Consumer;
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
  private int count;

  Trial(StartServices services, Surroundings around) {
    this.services = services;
    this.around = around;
  }

  /** Listens to a gauge on a port; a trial that goes on is ended first. */
  public void start(Path gauge, String port) {
    stop();
    lines.setAll(StartText.PRESS_NOW.with());
    listening.set(true);
    int mine = count;
    around.background().execute(() -> listen(mine, gauge, port));
  }

  /** Ends it. */
  public void stop() {
    count++;
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

  private void listen(int mine, Path gauge, String port) {
    Consumer<String> heard = line -> around.screen().execute(() -> hear(mine, line));
    try {
      Runnable end = services.listen(gauge, port, heard);
      around.screen().execute(() -> listensUntil(mine, end));
    } catch (RuntimeException e) {
      throw e;
    } catch (Exception e) {
      around.screen().execute(() -> failed(mine, e.getMessage()));
    }
  }

  /**
   * One that was ended before its port was open, maybe by the next one, must free it all the same.
   */
  private void listensUntil(int mine, Runnable end) {
    if (mine == count) {
      stop = end;
    } else {
      end.run();
    }
  }

  private void failed(int mine, String why) {
    hear(mine, why);
    if (mine == count) {
      listening.set(false);
    }
  }

  /** What one that was ended still has to say would stand among the lines of the next one. */
  private void hear(int mine, String line) {
    if (mine != count) {
      return;
    }
    lines.add(line);
    while (lines.size() > LINES) {
      lines.remove(0);
    }
  }
}
