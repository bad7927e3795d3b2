package boreledger.station.bench.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import boreledger.station.app.GaugeLesson;
import boreledger.station.app.LessonEvent;
import boreledger.station.bench.House;
import boreledger.station.bench.look.Surroundings;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.function.Consumer;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person chooses while an earlier choice is still being opened. */
class LessonModelTest {
  @TempDir Path folder;
  private final Queue<Runnable> background = new ArrayDeque<>();
  private final List<String> asked = new ArrayList<>();
  private final StringProperty port = new SimpleStringProperty("/dev/ttyUSB0");
  private LessonModel model;

  @BeforeEach
  void aBackgroundThatWaits() {
    Surroundings own = House.empty(folder).around();
    Surroundings around =
        new Surroundings(
            own.workshop(),
            own.results(),
            own.appearance(),
            background::add,
            own.screen(),
            own.go());
    model = new LessonModel(new Refusing(), around, port, file -> {});
  }

  @Test
  void whatWasChosenWhenItBeganIsOpened() {
    model.begin();
    port.set("/dev/ttyUSB1");
    model.source().kind().set(LessonSource.Kind.RECORDING);
    background.remove().run();

    assertEquals(List.of("/dev/ttyUSB0"), asked);
    assertEquals("serial port /dev/ttyUSB0: is in use", model.sourceProblem().get());
    assertFalse(model.going().get());
  }

  @Test
  void aRecordingThatCanBeNoFileIsRefusedInWords() {
    model.source().kind().set(LessonSource.Kind.RECORDING);
    model.source().recording().set("a\0b");
    model.begin();
    background.remove().run();

    assertEquals(List.of(), asked);
    assertEquals("a\0b cannot be a file", model.sourceProblem().get());
  }

  /** Notes what is asked for, and opens nothing. */
  private final class Refusing implements LessonServices {
    @Override
    public GaugeLesson learnAt(String path, Consumer<LessonEvent> told) throws Exception {
      asked.add(path);
      throw new Exception("serial port " + path + ": is in use");
    }

    @Override
    public GaugeLesson learnFrom(Path recording, Consumer<LessonEvent> told) throws Exception {
      asked.add(recording.toString());
      throw new Exception(recording + ": there is no such file");
    }
  }
}
