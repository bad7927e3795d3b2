package boreledger.station.bench.ledger;

import boreledger.station.app.ReportAnswer;
import boreledger.station.app.ReportFile;
import boreledger.station.app.ReportRequest;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.Text;
import boreledger.station.report.Paper;
import java.nio.file.Path;
import java.util.Locale;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Writes the build sheet of a job. */
public final class SheetModel {
  private final LedgerAround around;
  private final Asking writing;
  private final StringProperty job = new SimpleStringProperty("");
  private final FileToWrite file = new FileToWrite();
  private final StringProperty by = new SimpleStringProperty("");
  private final ObjectProperty<Paper> paper = new SimpleObjectProperty<>(Paper.A4);
  private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyStringWrapper done = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

  SheetModel(LedgerAround around) {
    this.around = around;
    writing = new Asking(around.working(), around.around().screen(), this::failed);
    job.subscribe(this::propose);
  }

  /** Writes the sheet; what stands in the way is told. */
  public void write() {
    done.set("");
    problem.set("");
    if (running.get()) {
      return;
    } else if (job.get().isEmpty()) {
      problem.set(LedgerText.SHEET_NEEDS_JOB.with());
    } else {
      file.path(problem::set).ifPresent(this::write);
    }
  }

  /** Forgets the job, since another ledger is shown. */
  void clear() {
    writing.forget();
    running.set(false);
    job.set("");
    done.set("");
    problem.set("");
  }

  /** The job; empty while none is known. */
  public StringProperty job() {
    return job;
  }

  /** The file to write, as typed. */
  public StringProperty file() {
    return file.typed();
  }

  /** Who makes the sheet, as typed. */
  public StringProperty by() {
    return by;
  }

  /** The paper. */
  public ObjectProperty<Paper> paper() {
    return paper;
  }

  /** Whether a file that is there may be written over. */
  public BooleanProperty replace() {
    return file.replace();
  }

  /** Whether a sheet is being written. */
  public ReadOnlyBooleanProperty running() {
    return running.getReadOnlyProperty();
  }

  /** What was written, in words; empty before. */
  public ReadOnlyStringProperty done() {
    return done.getReadOnlyProperty();
  }

  /** What stands in the way, in words; empty when nothing is known. */
  public ReadOnlyStringProperty problem() {
    return problem.getReadOnlyProperty();
  }

  private void write(Path out) {
    ReportRequest request =
        new ReportRequest(
            around.ledger(),
            job.get(),
            out,
            file.replace().get(),
            paper.get(),
            around.around().appearance().unit().get(),
            by.get().isBlank() ? null : by.get().strip());
    running.set(true);
    writing.ask(() -> ReportFile.write(request, around.clock()), this::written);
  }

  private void written(ReportAnswer sheet) {
    running.set(false);
    Text words = sheet.attention() ? LedgerText.SHEET_ATTENTION : LedgerText.SHEET_DONE;
    done.set(
        words.with(
            sheet.file(), Integer.toString(sheet.pages()), Integer.toString(sheet.cautions())));
  }

  private void failed(String what) {
    running.set(false);
    problem.set(what);
  }

  private void propose(String name) {
    if (name.isEmpty()) {
      file.typed().set("");
      return;
    }
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
    file.propose(around.ledger(), plain + ".pdf");
  }
}
