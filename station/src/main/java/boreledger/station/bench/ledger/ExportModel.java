package boreledger.station.bench.ledger;

import boreledger.station.app.SessionLine;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.keeping.Choice;
import boreledger.station.keeping.Export;
import boreledger.station.keeping.Progress;
import boreledger.station.keeping.Stopped;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.StringProperty;

/** Hands out readings or the whole chain as a file. */
public final class ExportModel {
  private final LedgerAround around;
  private final Asking writing;
  private final ObjectProperty<SessionLine> session = new SimpleObjectProperty<>();
  private final ObjectProperty<ExportKind> kind = new SimpleObjectProperty<>(ExportKind.SESSION);
  private final FileToWrite file = new FileToWrite();
  private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyStringWrapper saying = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
  private AtomicBoolean stop = new AtomicBoolean();

  ExportModel(LedgerAround around) {
    this.around = around;
    writing = new Asking(around.working(), around.around().screen(), this::failed);
    session.subscribe(shown -> propose());
    kind.subscribe(chosen -> propose());
  }

  /** Writes the file; what stands in the way is told. */
  public void write() {
    if (running.get()) {
      return;
    }
    saying.set("");
    problem.set("");
    if (session.get() == null) {
      problem.set(LedgerText.EXPORT_NEEDS_SESSION.with());
    } else {
      file.path(problem::set).ifPresent(out -> write(export(), out, file.replace().get()));
    }
  }

  /** Stops soon; no file is left then. */
  public void stop() {
    stop.set(true);
  }

  /** Forgets the session, since another ledger is shown. */
  void clear() {
    stop();
    writing.forget();
    running.set(false);
    session.set(null);
    saying.set("");
    problem.set("");
  }

  /** The session that is shown; null for none. */
  ObjectProperty<SessionLine> session() {
    return session;
  }

  /** What is exported. */
  public ObjectProperty<ExportKind> kind() {
    return kind;
  }

  /** The file to write, as typed. */
  public StringProperty file() {
    return file.typed();
  }

  /** Whether a file that is there may be written over. */
  public BooleanProperty replace() {
    return file.replace();
  }

  /** Whether a file is being written. */
  public ReadOnlyBooleanProperty running() {
    return running.getReadOnlyProperty();
  }

  /** What goes on or was written, in words; empty before. */
  public ReadOnlyStringProperty saying() {
    return saying.getReadOnlyProperty();
  }

  /** What stands in the way, in words; empty when nothing is known. */
  public ReadOnlyStringProperty problem() {
    return problem.getReadOnlyProperty();
  }

  private Export export() {
    Choice all = new Choice(null, null);
    return switch (kind.get()) {
      case SESSION ->
          new Export(around.ledger(), Export.Format.CSV, new Choice(null, session.get().id()));
      case READINGS -> new Export(around.ledger(), Export.Format.CSV, all);
      case CHAIN -> new Export(around.ledger(), Export.Format.JSON, all);
    };
  }

  private void write(Export export, Path out, boolean over) {
    AtomicBoolean stopThis = new AtomicBoolean();
    stop = stopThis;
    running.set(true);
    saying.set(LedgerText.EXPORT_BEGINS.with());
    Steps steps =
        new Steps(
            around.around().screen(),
            stopThis,
            (done, of) -> saying.set(LedgerText.EXPORT_AT.with(Long.toString(done))));
    Progress progress =
        done -> {
          if (!steps.at(done, done)) {
            throw new Stopped();
          }
        };
    writing.ask(
        () -> {
          try {
            return export.into(out, over, progress);
          } finally {
            steps.end();
          }
        },
        exported -> {
          running.set(false);
          saying.set(exported.words());
        });
  }

  private void failed(String what) {
    running.set(false);
    saying.set("");
    problem.set(what);
  }

  /** A file beside the ledger, named for what is in it. */
  private void propose() {
    if (session.get() == null) {
      file.typed().set("");
      return;
    }
    String ledger = around.ledger().getFileName().toString().replaceAll("\\.db$", "");
    String name =
        switch (kind.get()) {
          case SESSION -> ledger + "-" + session.get().id() + ".csv";
          case READINGS -> ledger + ".csv";
          case CHAIN -> ledger + ".json";
        };
    file.propose(around.ledger(), name);
  }
}
