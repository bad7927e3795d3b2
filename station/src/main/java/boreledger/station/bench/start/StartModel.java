package boreledger.station.bench.start;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.file.FileProblem;
import boreledger.station.app.Folders;
import boreledger.station.app.LiveChoice;
import boreledger.station.app.LiveRequest;
import boreledger.station.app.Workshop;
import boreledger.station.bench.lesson.LessonModel;
import boreledger.station.bench.look.Surroundings;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.words.Text;
import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import boreledger.station.table.Tables;
import java.nio.file.Path;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** What is chosen before gauging begins. It belongs to the screen's thread. */
public final class StartModel {
  private static final String JOBS = "job";

  private final StartServices services;
  private final Surroundings around;
  private final Memory memory;
  private final String benchRoom;
  private final double practicePace;
  private final ReadOnlyObjectWrapper<JobCard> job = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Path> editing = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
  private final ObservableList<Path> recent = FXCollections.observableArrayList();
  // Kept, since such a view forgets those who listen to it once nobody holds it.
  private final ObservableList<Path> recentToSee = FXCollections.unmodifiableObservableList(recent);
  private final ObjectProperty<Measure> measure = new SimpleObjectProperty<>(Measure.BORE);
  private final ObservableList<String> rings = FXCollections.observableArrayList();
  private final ObservableList<String> ringsToSee = FXCollections.unmodifiableObservableList(rings);
  private final StringProperty ring = new SimpleStringProperty();
  private final ReadOnlyBooleanWrapper teaching = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyStringWrapper taught = new ReadOnlyStringWrapper("");
  private final GaugeChoice gauge;
  private final Going going;
  private final LessonModel lesson;
  private final StringProperty settingTemp = new SimpleStringProperty("");
  private final StringProperty blockTemp = new SimpleStringProperty("");
  private final Trial trial;
  private Tables tables;

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
    this.memory = memory;
    this.benchRoom = benchRoom;
    this.practicePace = practicePace;
    this.trial = new Trial(services, around);
    recent.setAll(memory.recent(JOBS));
    gauge = new GaugeChoice(services, around, memory);
    going = new Going(services, around);
    lesson = new LessonModel(services, around, gauge.port(), this::taught);
  }

  /** Opens a job file; what is wrong with it is told. */
  public void open(Path file) {
    problem.set("");
    around.background().execute(() -> read(file));
  }

  /** Opens the invented engine and begins to practise on it at once. */
  public void practiseNow() {
    problem.set("");
    LiveRequest request =
        new LiveRequest(
            Folders.sampleJob(),
            new LiveChoice.Practice(1, practicePace),
            Measure.BORE,
            null,
            20.0,
            20.0,
            Folders.practiceLedger(),
            true);
    open(Folders.sampleJob());
    begin(request);
  }

  /** Makes a new job in a form. */
  public void newJob() {
    edit(folder());
  }

  /** Changes the open job in a form; does nothing while none is open. */
  public void editJob() {
    if (job.get() != null) {
      edit(job.get().file());
    }
  }

  /** The form was saved; its job is opened. */
  void saved(Path file) {
    editing.set(null);
    open(file);
  }

  /** The form was left. */
  void left() {
    editing.set(null);
  }

  /** Stops what is being gauged. */
  public void stopGauging() {
    problem.set("");
    going.stop();
  }

  /** The folder where the person's own jobs are. */
  public Path folder() {
    return Folders.ofJobs(recent);
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

  private void taught(Path file) {
    gauge.taught(file);
    taught.set(Text.START_TAUGHT.with(file.getFileName().toString()));
    teaching.set(false);
  }

  /** Begins to gauge what is chosen; what stands in the way is told. */
  public void begin() {
    Optional<String> missing = missing();
    problem.set(missing.orElse(""));
    if (missing.isEmpty()) {
      begin(request());
    }
  }

  /** The job that is edited, or the folder of a new one; null while no form is open. */
  ReadOnlyObjectProperty<Path> editing() {
    return editing.getReadOnlyProperty();
  }

  /** The tables that a form chooses from; null until a form is open. */
  Tables tables() {
    return tables;
  }

  /** The job that is open; null while none is. */
  public ReadOnlyObjectProperty<JobCard> job() {
    return job.getReadOnlyProperty();
  }

  /** Where readings go. */
  public Path ledger() {
    return around.workshop().get().ledger();
  }

  /** What stands in the way of beginning, in words; empty when nothing is known. */
  public ReadOnlyStringProperty problem() {
    return problem.getReadOnlyProperty();
  }

  /** Job files used of late, the last one first. */
  public ObservableList<Path> recent() {
    return recentToSee;
  }

  /** What is gauged. */
  public ObjectProperty<Measure> measure() {
    return measure;
  }

  /** The job's rings by name. */
  public ObservableList<String> rings() {
    return ringsToSee;
  }

  /** Which ring, when no bores are gauged. */
  public StringProperty ring() {
    return ring;
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

  /** The setting ring's temperature, as typed. */
  public StringProperty settingTemp() {
    return settingTemp;
  }

  /** The block's temperature, as typed. */
  public StringProperty blockTemp() {
    return blockTemp;
  }

  /** Listening to a gauge without gauging. */
  public Trial trial() {
    return trial;
  }

  private void edit(Path file) {
    problem.set("");
    try {
      tables = services.tables();
      editing.set(file);
    } catch (FileProblem e) {
      problem.set(e.getMessage());
    }
  }

  private void read(Path file) {
    try {
      Job read = services.job(file);
      around.screen().execute(() -> opened(JobCard.of(file, read)));
    } catch (FileProblem e) {
      around.screen().execute(() -> problem.set(e.getMessage()));
    }
  }

  private void opened(JobCard card) {
    memory.used(JOBS, card.file());
    recent.setAll(memory.recent(JOBS));
    around.workshop().set(new Workshop(ledger(card)));
    job.set(card);
    rings.setAll(card.job().rings().stream().map(Ring::name).toList());
    ring.set(rings.isEmpty() ? null : rings.get(0));
  }

  private static Path ledger(JobCard card) {
    boolean sample = whole(card.file()).equals(whole(Folders.sampleJob()));
    return sample ? Folders.practiceLedger() : Folders.ledgerBeside(card.file());
  }

  private static Path whole(Path file) {
    return file.toAbsolutePath().normalize();
  }

  private Optional<String> missing() {
    if (job.get() == null) {
      return Optional.of(Text.START_NEEDS_JOB.with());
    } else if (measure.get() != Measure.BORE && ring.get() == null) {
      return Optional.of(Text.START_NEEDS_RING.with());
    } else if (!gauge.practising().get() && gauge.port().get().isBlank()) {
      return Optional.of(Text.START_NEEDS_PORT.with());
    }
    return new Temperature(settingTemp.get())
        .problem()
        .or(() -> new Temperature(blockTemp.get()).problem());
  }

  private LiveRequest request() {
    return new LiveRequest(
        job.get().file(),
        gauge.practising().get()
            ? new LiveChoice.Practice(1, practicePace)
            : new LiveChoice.Gauge(gauge.profile().get().gauge(), gauge.port().get().strip(), true),
        measure.get(),
        measure.get() == Measure.BORE ? null : ring.get(),
        new Temperature(settingTemp.get()).degC(),
        new Temperature(blockTemp.get()).degC(),
        around.workshop().get().ledger(),
        false);
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
      around
          .screen()
          .execute(
              () -> {
                going.look();
                around.go().accept(benchRoom);
              });
    } catch (RuntimeException e) {
      throw e;
    } catch (Exception e) {
      around
          .screen()
          .execute(
              () -> {
                going.look();
                problem.set(e.getMessage());
              });
    }
  }
}
