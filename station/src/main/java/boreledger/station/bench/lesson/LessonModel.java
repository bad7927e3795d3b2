package boreledger.station.bench.lesson;

import boreledger.drivers.learn.Learned;
import boreledger.drivers.learn.ShownValue;
import boreledger.station.app.GaugeLesson;
import boreledger.station.app.LessonEvent;
import boreledger.station.bench.look.Surroundings;
import boreledger.station.bench.words.LessonText;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.ObservableList;

/** A gauge being taught. It belongs to the screen's thread. */
public final class LessonModel {
  private final LessonServices services;
  private final Surroundings around;
  private final LessonSource source;
  private final StringProperty typed = new SimpleStringProperty("");
  private final ReadOnlyBooleanWrapper going = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyStringWrapper sourceProblem = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper typedProblem = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper typedNote = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper listening = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<LessonEvent.Told> told = new ReadOnlyObjectWrapper<>();
  private final HeardLines heard = new HeardLines();
  private final KeepModel keep;
  private GaugeLesson lesson;
  private int count;

  /**
   * Nothing is taught yet.
   *
   * @param port the port chosen, here or elsewhere
   * @param written told the profile's file once it is written
   */
  public LessonModel(
      LessonServices services, Surroundings around, StringProperty port, Consumer<Path> written) {
    this.services = services;
    this.around = around;
    this.source = new LessonSource(port);
    this.keep =
        new KeepModel(
            around,
            file -> {
              stop();
              written.accept(file);
            });
  }

  /** Listens to the port, or reads the recording; what was taught so far is forgotten. */
  public void begin() {
    forget();
    sourceProblem.set(source.missing().orElse(""));
    if (sourceProblem.get().isEmpty()) {
      going.set(true);
      int mine = count;
      LessonSource.Chosen chosen = source.chosen(services);
      around.background().execute(() -> open(mine, chosen));
    }
  }

  /** Ends it, and nothing of what was taught is left. */
  public void forget() {
    stop();
    told.set(null);
    heard.clear();
    listening.set("");
    sourceProblem.set("");
    keep.learned(null);
  }

  /** Ends it; the port is free, and nothing is written. */
  public void stop() {
    count++;
    if (lesson != null) {
      lesson.close();
      lesson = null;
    }
    typedProblem.set("");
    typedNote.set("");
    going.set(false);
  }

  /** The gauge shows what is typed. */
  public void show() {
    Optional<ShownValue> value = GaugeLesson.value(typed.get());
    typedProblem.set(value.isPresent() ? "" : LessonText.SHOWN_BAD.with(typed.get().strip()));
    typedNote.set("");
    value.ifPresent(shown -> wish(each -> each.shows(shown)));
  }

  /** The last value was not what it showed. */
  public void takeBack() {
    wish(GaugeLesson::takeBack);
  }

  /** The setting listened at is not the gauge's. */
  public void tryNext() {
    wish(GaugeLesson::tryNext);
  }

  /** Where the bytes come from. */
  public LessonSource source() {
    return source;
  }

  /** What the gauge's display shows, as typed. */
  public StringProperty typed() {
    return typed;
  }

  /** Whether a gauge is being taught. */
  public ReadOnlyBooleanProperty going() {
    return going.getReadOnlyProperty();
  }

  /** What is wrong with the port or the recording; empty when nothing is. */
  public ReadOnlyStringProperty sourceProblem() {
    return sourceProblem.getReadOnlyProperty();
  }

  /** What is wrong with the value typed; empty when nothing is. */
  public ReadOnlyStringProperty typedProblem() {
    return typedProblem.getReadOnlyProperty();
  }

  /** What is waited for now that a value was given; empty when nothing is. */
  public ReadOnlyStringProperty typedNote() {
    return typedNote.getReadOnlyProperty();
  }

  /** How the port is listened to, in words; empty when none is. */
  public ReadOnlyStringProperty listening() {
    return listening.getReadOnlyProperty();
  }

  /** What is known; null until something is told. */
  public ReadOnlyObjectProperty<LessonEvent.Told> told() {
    return told.getReadOnlyProperty();
  }

  /** What arrived, a line for each burst, the last one at the end. */
  public ObservableList<String> lines() {
    return heard.lines();
  }

  /** What is to become of what was learned. */
  public KeepModel keep() {
    return keep;
  }

  private void open(int mine, LessonSource.Chosen chosen) {
    Consumer<LessonEvent> screen = event -> around.screen().execute(() -> hear(mine, event));
    try {
      GaugeLesson opened = chosen.learn(screen);
      around.screen().execute(() -> opened(mine, opened));
    } catch (RuntimeException e) {
      throw e;
    } catch (Exception e) {
      around.screen().execute(() -> hear(mine, new LessonEvent.Broke(e.getMessage())));
    }
  }

  private void opened(int mine, GaugeLesson opened) {
    if (mine == count) {
      lesson = opened;
    } else {
      opened.close();
    }
  }

  private void wish(Consumer<GaugeLesson> wish) {
    GaugeLesson now = lesson;
    if (now != null) {
      around.background().execute(() -> wish.accept(now));
    }
  }

  /** What a lesson that was stopped still has to say is of no interest. */
  private void hear(int mine, LessonEvent event) {
    if (mine != count) {
      return;
    }
    if (event instanceof LessonEvent.Arrived arrived) {
      heard.add(arrived);
    } else if (event instanceof LessonEvent.Told now) {
      tell(now);
    } else if (event instanceof LessonEvent.Listening now) {
      listening.set(LessonWords.listening(now));
    } else if (event instanceof LessonEvent.AwaitsPress awaits) {
      typedNote.set(LessonText.AWAITS.with(LessonWords.value(awaits.shown())));
    } else if (event instanceof LessonEvent.NeverPauses) {
      typedProblem.set(LessonText.NEVER_PAUSES.with());
    } else if (event instanceof LessonEvent.Broke broke) {
      stop();
      sourceProblem.set(broke.why());
    }
  }

  private void tell(LessonEvent.Told now) {
    typedNote.set("");
    typedProblem.set("");
    Learned learned = now.learned();
    typed.set(source.isPort() ? LessonWords.offered(learned) : "");
    told.set(now);
    List<String> profiles = learned.candidates().stream().map(each -> each.profile()).toList();
    keep.learned(learned.certain() ? profiles.get(0) : null);
  }
}
