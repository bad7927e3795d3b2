package boreledger.station.bench.start;

import boreledger.drivers.file.FileProblem;
import boreledger.station.app.Folders;
import boreledger.station.app.Workshop;
import boreledger.station.bench.look.Surroundings;
import boreledger.station.bench.memory.Memory;
import boreledger.station.job.Job;
import boreledger.station.table.Tables;
import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The job: the one that is open, others of late, and the form that makes and changes them. */
public final class JobChoice {
  private static final String JOBS = "job";

  private final StartServices services;
  private final Surroundings around;
  private final Memory memory;
  private final Consumer<String> problem;
  private final ReadOnlyObjectWrapper<JobCard> card = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Path> editing = new ReadOnlyObjectWrapper<>();
  private final ObservableList<Path> recent = FXCollections.observableArrayList();
  // Kept, since such a view forgets those who listen to it once nobody holds it.
  private final ObservableList<Path> recentToSee = FXCollections.unmodifiableObservableList(recent);
  private Tables tables;

  /**
   * No job is open.
   *
   * @param problem told what is wrong with a job, in words; an empty text when nothing is any more
   */
  JobChoice(StartServices services, Surroundings around, Memory memory, Consumer<String> problem) {
    this.services = services;
    this.around = around;
    this.memory = memory;
    this.problem = problem;
    recent.setAll(memory.recent(JOBS));
  }

  /** Opens a job file; what is wrong with it is told. */
  public void open(Path file) {
    problem.accept("");
    around.background().execute(() -> read(file));
  }

  /** Makes a new job in a form. */
  public void make() {
    edit(folder());
  }

  /** Changes the open job in a form; does nothing while none is open. */
  public void edit() {
    if (card.get() != null) {
      edit(card.get().file());
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

  /** The job that is open; null while none is. */
  public ReadOnlyObjectProperty<JobCard> card() {
    return card.getReadOnlyProperty();
  }

  /** The job that is edited, or the folder of a new one; null while no form is open. */
  ReadOnlyObjectProperty<Path> editing() {
    return editing.getReadOnlyProperty();
  }

  /** The tables that a form chooses from; null until a form is open. */
  Tables tables() {
    return tables;
  }

  /** The folder where the person's own jobs are. */
  public Path folder() {
    return Folders.ofJobs(recent);
  }

  /** Where readings go. */
  public Path ledger() {
    return around.workshop().get().ledger();
  }

  /** Job files used of late, the last one first. */
  public ObservableList<Path> recent() {
    return recentToSee;
  }

  private void edit(Path file) {
    problem.accept("");
    try {
      tables = services.tables();
      editing.set(file);
    } catch (FileProblem e) {
      problem.accept(e.getMessage());
    }
  }

  private void read(Path file) {
    try {
      Job read = services.job(file);
      around.screen().execute(() -> opened(JobCard.of(file, read)));
    } catch (FileProblem e) {
      around.screen().execute(() -> problem.accept(e.getMessage()));
    }
  }

  private void opened(JobCard read) {
    memory.used(JOBS, read.file());
    recent.setAll(memory.recent(JOBS));
    around.workshop().set(new Workshop(ledger(read)));
    card.set(read);
  }

  private static Path ledger(JobCard read) {
    boolean sample = whole(read.file()).equals(whole(Folders.sampleJob()));
    return sample ? Folders.practiceLedger() : Folders.ledgerBeside(read.file());
  }

  private static Path whole(Path file) {
    return file.toAbsolutePath().normalize();
  }
}
