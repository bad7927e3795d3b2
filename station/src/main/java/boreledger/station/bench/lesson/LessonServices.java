package boreledger.station.bench.lesson;

import boreledger.station.app.GaugeLesson;
import boreledger.station.app.LessonEvent;
import java.nio.file.Path;
import java.util.function.Consumer;

/** What teaching needs from the rest of the program. Called in the background. */
public interface LessonServices {
  /**
   * Begins to learn a gauge at a port.
   *
   * @param told told what happens, on any thread
   * @throws Exception with a one-line message that says what stands in the way
   */
  GaugeLesson learnAt(String port, Consumer<LessonEvent> told) throws Exception;

  /**
   * Begins to learn a gauge from a recording.
   *
   * @param told told what happens, on any thread
   * @throws Exception with a one-line message that says what stands in the way
   */
  GaugeLesson learnFrom(Path recording, Consumer<LessonEvent> told) throws Exception;
}
