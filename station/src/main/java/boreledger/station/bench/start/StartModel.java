package boreledger.station.bench.start;

import boreledger.drivers.capture.Measure;
import boreledger.station.app.Folders;
import boreledger.station.app.LiveChoice;
import boreledger.station.app.LiveRequest;
import boreledger.station.app.Workshop;
import boreledger.station.bench.lesson.LessonModel;
import boreledger.station.bench.look.Surroundings;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.words.StartText;
import java.nio.file.Path;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** What is chosen before gauging begins. It belongs to the screen's thread. */
public final class StartModel {
  // What the invented engine is practised at in one click: nothing has to be corrected to 20 °C.
  private static final double PRACTICE_TEMP_C = 20;
  private static final long PRACTICE_SEED = 1;

  private final StartServices services;
  private final Surroundings around;
  private final String benchRoom;
  private final double practicePace;
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
  private final ReadOnlyBooleanWrapper teaching = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyStringWrapper taught = new ReadOnlyStringWrapper("");
  private final JobChoice job;
  private final MeasureChoice measuring;
  private final GaugeChoice gauge;
  private final Going going;
  private final LessonModel lesson;
  private final Trial trial;

  /**
   * A room where nothing is chosen yet but what is remembered.
   *
   * @param benchRoom the room to go to when gauging begins
   * @param practicePace how many times faster than life the practice gauge works
   */
  public StartModel(
      StartServices services,
      Surroundings around,
      Memory memory,
      String benchRoom,
      double practicePace) {
    this.services = services;
    this.around = around;
    this.benchRoom = benchRoom;
    this.practicePace = practicePace;
    job = new JobChoice(services, around, memory, problem::set);
    measuring = new MeasureChoice(job.card());
    gauge = new GaugeChoice(services, around, memory);
    going = new Going(services, around);
    lesson = new LessonModel(services, around, gauge.port(), this::taught);
    trial = new Trial(services, around);
  }

  /** Opens the invented engine and begins to practise on it at once. */
  public void practiseNow() {
    LiveRequest request =
        new LiveRequest(
            Folders.sampleJob(),
            practice(),
            Measure.BORE,
            null,
            PRACTICE_TEMP_C,
            PRACTICE_TEMP_C,
            Folders.practiceLedger(),
            true);
    job.open(Folders.sampleJob());
    begin(request);
  }

  /** Begins to gauge what is chosen; what stands in the way is told. */
  public void begin() {
    Optional<String> missing = missing();
    problem.set(missing.orElse(""));
    if (missing.isEmpty()) {
      begin(request());
    }
  }

  /** Stops what is being gauged. */
  public void stopGauging() {
    problem.set("");
    going.stop();
  }

  /** Teaches a gauge that no profile fits. */
  public void teach() {
    trial.stop();
    taught.set("");
    lesson.forget();
    teaching.set(true);
  }

  /** The lesson was left. */
  void leftLesson() {
    teaching.set(false);
  }

  /** What stands in the way of beginning, in words; empty when nothing is known. */
  public ReadOnlyStringProperty problem() {
    return problem.getReadOnlyProperty();
  }

  /** Which job. */
  public JobChoice job() {
    return job;
  }

  /** What of it, and at which temperatures. */
  public MeasureChoice measuring() {
    return measuring;
  }

  /** Which gauge. */
  public GaugeChoice gauge() {
    return gauge;
  }

  /** Whether a gauge is being taught. */
  public ReadOnlyBooleanProperty teaching() {
    return teaching.getReadOnlyProperty();
  }

  /** The lesson. */
  public LessonModel lesson() {
    return lesson;
  }

  /** What came of the last lesson, in words; empty when nothing did. */
  public ReadOnlyStringProperty taught() {
    return taught.getReadOnlyProperty();
  }

  /** What is being gauged meanwhile. */
  public Going going() {
    return going;
  }

  /** Listening to a gauge without gauging. */
  public Trial trial() {
    return trial;
  }

  private void taught(Path file) {
    gauge.taught(file);
    taught.set(StartText.TAUGHT.with(file.getFileName().toString()));
    teaching.set(false);
  }

  private Optional<String> missing() {
    if (job.card().get() == null) {
      return Optional.of(StartText.NEEDS_JOB.with());
    }
    return measuring.missingRing().or(gauge::missing).or(measuring::impossibleTemperature);
  }

  private LiveRequest request() {
    return new LiveRequest(
        job.card().get().file(),
        gauge.practising().get() ? practice() : gauge.atPort(),
        measuring.measure().get(),
        measuring.ringGauged(),
        new Temperature(measuring.settingTemp().get()).degC(),
        new Temperature(measuring.blockTemp().get()).degC(),
        job.ledger(),
        false);
  }

  private LiveChoice practice() {
    return new LiveChoice.Practice(PRACTICE_SEED, practicePace);
  }

  private void begin(LiveRequest request) {
    trial.stop();
    gauge.remember(request.listening());
    around.workshop().set(new Workshop(request.ledger()));
    around.background().execute(() -> beginInBackground(request));
  }

  private void beginInBackground(LiveRequest request) {
    try {
      services.begin(request);
      around.screen().execute(this::begun);
    } catch (RuntimeException e) {
      throw e;
    } catch (Exception e) {
      around.screen().execute(() -> refused(e.getMessage()));
    }
  }

  private void begun() {
    going.look();
    around.go().accept(benchRoom);
  }

  private void refused(String why) {
    going.look();
    problem.set(why);
  }
}
