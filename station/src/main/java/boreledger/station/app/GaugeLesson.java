package boreledger.station.app;

import boreledger.drivers.capture.CaptureFiles;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.learn.ShownValue;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A gauge being learned from values that it shows, one after the other. Its methods may be called
 * from any thread; what comes of them is told to a listener, on a thread of the lesson's own or on
 * the caller's.
 */
public interface GaugeLesson extends AutoCloseable {
  /** How long a setting is listened to in vain, as on the command line. */
  Duration PATIENCE = GaugeLearning.PATIENCE;

  /** The gauge shows a value: what it last sent is this one, or what it sends next. */
  void shows(ShownValue value);

  /** Forgets the last value. */
  void takeBack();

  /** Gives the port's setting up for the next one; does nothing for a recording. */
  void tryNext();

  /**
   * Ends it; a port is free again when this returns, or, when it was just being opened, as soon as
   * it is open.
   */
  @Override
  void close();

  /**
   * Listens at a serial port, {@code tcp://host:port} included.
   *
   * @param patience how long a setting is listened to in vain before the next one is tried
   * @throws UsageProblem if a network address cannot be one
   */
  static GaugeLesson atPort(String port, Duration patience, Consumer<LessonEvent> told)
      throws UsageProblem {
    PortLesson lesson = new PortLesson(LessonPort.of(port), patience, told);
    lesson.start();
    return lesson;
  }

  /**
   * Learns from what a gauge sent earlier.
   *
   * @throws FileProblem if the recording cannot be read
   */
  static GaugeLesson ofRecording(Path capture, Consumer<LessonEvent> told) throws FileProblem {
    RecordedLesson lesson = new RecordedLesson(CaptureFiles.read(capture).chunks(), told);
    lesson.start();
    return lesson;
  }

  /** A value as a person types it, {@code 5.000}, {@code 5,000} or {@code 0.5in}, if it is one. */
  static Optional<ShownValue> value(String typed) {
    return ShownValues.one(typed.strip().replace(',', '.'));
  }
}
