package boreledger.station.bench.start;

import boreledger.drivers.capture.Measure;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.serial.PortIdentity;
import boreledger.station.app.Folders;
import boreledger.station.app.LiveChoice;
import boreledger.station.app.LiveRequest;
import boreledger.station.app.Workshop;
import boreledger.station.bench.look.Surroundings;
import boreledger.station.bench.memory.Memory;
import boreledger.station.bench.words.Text;
import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import boreledger.station.table.Tables;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** What is chosen before gauging begins. It belongs to the screen's thread. */
public final class StartModel {
  private static final String JOBS = "job";
  private static final String PROFILES = "gauge";
  private static final String PORT = "port";

  private final StartServices services;
  private final Surroundings around;
  private final Memory memory;
  private final String benchRoom;
  private final ReadOnlyObjectWrapper<JobCard> job = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Path> editing = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
  private final ObservableList<Path> recent = FXCollections.observableArrayList();
  private final ObjectProperty<Measure> measure = new SimpleObjectProperty<>(Measure.BORE);
  private final ObservableList<String> rings = FXCollections.observableArrayList();
  private final StringProperty ring = new SimpleStringProperty();
  private final BooleanProperty practising = new SimpleBooleanProperty(true);
  private final ObservableList<PortIdentity> ports = FXCollections.observableArrayList();
  private final StringProperty port = new SimpleStringProperty("");
  private final ObservableList<ProfileChoice> profiles = FXCollections.observableArrayList();
  private final ObjectProperty<ProfileChoice> profile = new SimpleObjectProperty<>();
  private final StringProperty settingTemp = new SimpleStringProperty("");
  private final StringProperty blockTemp = new SimpleStringProperty("");
  private final Trial trial;
  private Tables tables;

  /**
   * A room where nothing is chosen yet but what is remembered.
   *
   * @param benchRoom the room to go to when gauging begins
   */
  public StartModel(StartServices services, Surroundings around, Memory memory, String benchRoom) {
    this.services = services;
    this.around = around;
    this.memory = memory;
    this.benchRoom = benchRoom;
    this.trial = new Trial(services, around);
    recent.setAll(memory.recent(JOBS));
    profiles.setAll(ProfileChoice.builtIn());
    for (Path file : memory.recent(PROFILES)) {
      profiles.add(ProfileChoice.file(file));
    }
    profile.set(profiles.get(0));
    memory.get(PORT).ifPresent(port::set);
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
            new LiveChoice.Practice(1, 1),
            Measure.BORE,
            null,
            20.0,
            20.0,
            Folders.practiceLedger(),
            true);
    begin(request);
  }

  /** Looks which ports there are. */
  public void lookForPorts() {
    around
        .background()
        .execute(
            () -> {
              List<PortIdentity> found = services.ports();
              around.screen().execute(() -> ports.setAll(found));
            });
  }

  /** Takes a profile from a file of the person's own. */
  public void takeProfile(Path file) {
    ProfileChoice choice = ProfileChoice.file(file);
    if (!profiles.contains(choice)) {
      profiles.add(choice);
    }
    profile.set(choice);
  }

  /** Makes a new job in a form. */
  public void newJob() {
    Path folder =
        recent.isEmpty() ? Path.of(System.getProperty("user.home")) : recent.get(0).getParent();
    edit(folder);
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
    return FXCollections.unmodifiableObservableList(recent);
  }

  /** What is gauged. */
  public ObjectProperty<Measure> measure() {
    return measure;
  }

  /** The job's rings by name. */
  public ObservableList<String> rings() {
    return FXCollections.unmodifiableObservableList(rings);
  }

  /** Which ring, when no bores are gauged. */
  public StringProperty ring() {
    return ring;
  }

  /** Whether to practise without a gauge. */
  public BooleanProperty practising() {
    return practising;
  }

  /** The ports there were when last looked. */
  public ObservableList<PortIdentity> ports() {
    return FXCollections.unmodifiableObservableList(ports);
  }

  /** The port's path, as chosen or typed. */
  public StringProperty port() {
    return port;
  }

  /** The gauge profiles to choose from. */
  public ObservableList<ProfileChoice> profiles() {
    return FXCollections.unmodifiableObservableList(profiles);
  }

  /** The gauge's profile. */
  public ObjectProperty<ProfileChoice> profile() {
    return profile;
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
    boolean sample =
        card.file().toAbsolutePath().normalize().equals(Folders.sampleJob().toAbsolutePath());
    return sample ? Folders.practiceLedger() : Folders.ledgerBeside(card.file());
  }

  private Optional<String> missing() {
    if (job.get() == null) {
      return Optional.of(Text.START_NEEDS_JOB.with());
    } else if (measure.get() != Measure.BORE && ring.get() == null) {
      return Optional.of(Text.START_NEEDS_RING.with());
    } else if (!practising.get() && port.get().isBlank()) {
      return Optional.of(Text.START_NEEDS_PORT.with());
    }
    return new Temperature(settingTemp.get())
        .problem()
        .or(() -> new Temperature(blockTemp.get()).problem());
  }

  private LiveRequest request() {
    return new LiveRequest(
        job.get().file(),
        practising.get()
            ? new LiveChoice.Practice(1, 1)
            : new LiveChoice.Gauge(profile.get().gauge(), port.get().strip(), true),
        measure.get(),
        measure.get() == Measure.BORE ? null : ring.get(),
        new Temperature(settingTemp.get()).degC(),
        new Temperature(blockTemp.get()).degC(),
        around.workshop().get().ledger(),
        false);
  }

  private void begin(LiveRequest request) {
    trial.stop();
    remember(request);
    around.workshop().set(new Workshop(request.ledger()));
    around.background().execute(() -> beginInBackground(request));
  }

  private void remember(LiveRequest request) {
    if (request.listening() instanceof LiveChoice.Gauge gauge) {
      memory.put(PORT, gauge.port());
      if (gauge.gauge().getNameCount() > 1) {
        memory.used(PROFILES, gauge.gauge());
      }
    }
  }

  private void beginInBackground(LiveRequest request) {
    try {
      services.begin(request);
      around.screen().execute(() -> around.go().accept(benchRoom));
    } catch (RuntimeException e) {
      throw e;
    } catch (Exception e) {
      around.screen().execute(() -> problem.set(e.getMessage()));
    }
  }
}
