package boreledger.station.bench.lesson;

import boreledger.station.app.GaugeLesson;
import boreledger.station.app.LessonEvent;
import boreledger.station.app.UsageProblem;
import boreledger.station.bench.words.LessonText;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Where a gauge's bytes come from, as a person chooses it. It belongs to the screen's thread. */
public final class LessonSource {
  private final ObjectProperty<Kind> kind = new SimpleObjectProperty<>(Kind.PORT);
  private final StringProperty port;
  private final StringProperty recording = new SimpleStringProperty("");

  /** What there is to choose from. */
  public enum Kind {
    /** The gauge at a port. */
    PORT,
    /** What it sent earlier. */
    RECORDING
  }

  /** A source that was chosen. */
  @FunctionalInterface
  interface Chosen {
    /**
     * Begins to learn from it, in the background.
     *
     * @throws Exception with a one-line message that says what stands in the way
     */
    GaugeLesson learn(Consumer<LessonEvent> told) throws Exception;
  }

  /**
   * A port to begin with.
   *
   * @param port the port chosen, here or elsewhere
   */
  LessonSource(StringProperty port) {
    this.port = port;
  }

  /** Which of the two. */
  public ObjectProperty<Kind> kind() {
    return kind;
  }

  /** The recording's file, as chosen or typed. */
  public StringProperty recording() {
    return recording;
  }

  boolean isPort() {
    return kind.get() == Kind.PORT;
  }

  /** What is still to be chosen, in words; empty when nothing is. */
  Optional<String> missing() {
    if (isPort()) {
      return port.get().isBlank() ? Optional.of(LessonText.NEEDS_PORT.with()) : Optional.empty();
    }
    return recording.get().isBlank()
        ? Optional.of(LessonText.NEEDS_RECORDING.with())
        : Optional.empty();
  }

  /** What is chosen now, whatever is typed until it is begun with. */
  Chosen chosen(LessonServices services) {
    if (isPort()) {
      String path = port.get().strip();
      return told -> services.learnAt(path, told);
    }
    String file = recording.get().strip();
    return told -> services.learnFrom(path(file), told);
  }

  private static Path path(String file) throws UsageProblem {
    try {
      return Path.of(file);
    } catch (InvalidPathException e) {
      throw new UsageProblem(LessonText.NO_FILE.with(file));
    }
  }
}
