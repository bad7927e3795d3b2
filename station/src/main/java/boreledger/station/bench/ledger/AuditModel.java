package boreledger.station.bench.ledger;

import boreledger.station.app.Sealing;
import boreledger.station.audit.AuditReport;
import boreledger.station.audit.LedgerAudit;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.seal.KeyFile;
import boreledger.station.seal.Seal;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Checks the ledger, and seals it when nothing was found. */
public final class AuditModel {
  private final LedgerAround around;
  private final KeyFile keyFile;
  private final Asking doing;
  private final ReadOnlyBooleanWrapper running = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyDoubleWrapper share = new ReadOnlyDoubleWrapper(0);
  private final ReadOnlyStringWrapper saying = new ReadOnlyStringWrapper(idle());
  private final ReadOnlyObjectWrapper<AuditVerdict> verdict =
      new ReadOnlyObjectWrapper<>(AuditVerdict.NONE);
  private final ObservableList<AuditLine> lines = FXCollections.observableArrayList();
  // Kept, since such a view forgets those who listen to it once nobody holds it.
  private final ObservableList<AuditLine> linesToSee =
      FXCollections.unmodifiableObservableList(lines);
  private final StringProperty name = new SimpleStringProperty("");
  private final StringProperty passphrase = new SimpleStringProperty("");
  private AtomicBoolean stop = new AtomicBoolean();

  AuditModel(LedgerAround around) {
    this(around, KeyFile.own());
  }

  /** Seals with a key of one's choice. */
  AuditModel(LedgerAround around, KeyFile keyFile) {
    this.around = around;
    this.keyFile = keyFile;
    doing = new Asking(around.working(), around.around().screen(), this::failed);
  }

  /** Checks the ledger from its bytes up. */
  public void audit() {
    Path ledger = around.ledger();
    begin(
        progress -> LedgerAudit.of(ledger, Map.of(), Sealing.known(keyFile), progress),
        report -> saying.set(AuditLine.heading(report)));
  }

  /** Checks the ledger and signs it; what stands in the way is told. */
  public void seal() {
    String person = name.get().strip();
    if (around.gauging().getAsBoolean()) {
      failed(LedgerText.BUSY.with());
    } else if (!Seal.isName(person)) {
      failed(LedgerText.SEAL_NEEDS_NAME.with(Integer.toString(Seal.LONGEST_NAME)));
    } else {
      char[] secret = passphrase.get().isEmpty() ? null : passphrase.get().toCharArray();
      seal(new Sealing(around.ledger(), person, keyFile, secret, null));
    }
  }

  /** Stops soon; nothing is known then. */
  public void stop() {
    stop.set(true);
  }

  /** Forgets what was found, since another ledger is shown. */
  void clear() {
    stop();
    doing.forget();
    running.set(false);
    verdict.set(AuditVerdict.NONE);
    saying.set(idle());
    lines.clear();
  }

  /** Whether something goes on that can be stopped. */
  public ReadOnlyBooleanProperty running() {
    return running.getReadOnlyProperty();
  }

  /** How much of the ledger was checked, 0 to 1. */
  public ReadOnlyDoubleProperty share() {
    return share.getReadOnlyProperty();
  }

  /** What goes on, or what came of it, in words. */
  public ReadOnlyStringProperty saying() {
    return saying.getReadOnlyProperty();
  }

  /** How it went. */
  public ReadOnlyObjectProperty<AuditVerdict> verdict() {
    return verdict.getReadOnlyProperty();
  }

  /** Findings, notices and what else is worth knowing, line by line. */
  public ObservableList<AuditLine> lines() {
    return linesToSee;
  }

  /** Who seals, as typed. */
  public StringProperty name() {
    return name;
  }

  /** The key's passphrase, as typed; empty for none. */
  public StringProperty passphrase() {
    return passphrase;
  }

  private void seal(Sealing sealing) {
    begin(
        progress -> {
          sealing.check();
          AuditReport report =
              LedgerAudit.of(sealing.ledger(), Map.of(), Sealing.known(keyFile), progress);
          return new Signed(
              report, report.intact() ? sealing.seal(report.head(), around.clock()) : null);
        },
        Signed::report,
        result -> {
          passphrase.set("");
          saying.set(result.done() == null ? LedgerText.NOT_SEALED.with() : result.done().words());
        });
  }

  /** What came of sealing; not done when the audit had findings. */
  private record Signed(AuditReport report, Sealing.Done done) {}

  /** Long work that tells how far it is. */
  private interface Work<T> {
    T run(Steps progress) throws Exception;
  }

  private void begin(Work<AuditReport> work, Consumer<AuditReport> told) {
    begin(work, report -> report, told);
  }

  private <T> void begin(Work<T> work, Function<T, AuditReport> reportOf, Consumer<T> told) {
    if (running.get()) {
      return;
    }
    AtomicBoolean stopThis = new AtomicBoolean();
    stop = stopThis;
    running.set(true);
    share.set(0);
    verdict.set(AuditVerdict.NONE);
    saying.set(LedgerText.AUDIT_BEGINS.with());
    lines.clear();
    Steps steps = new Steps(around.around().screen(), stopThis, this::isAt);
    doing.ask(
        () -> {
          try {
            return work.run(steps);
          } finally {
            steps.end();
          }
        },
        result -> {
          running.set(false);
          AuditReport report = reportOf.apply(result);
          verdict.set(report.intact() ? AuditVerdict.INTACT : AuditVerdict.FINDINGS);
          lines.setAll(AuditLine.of(report));
          told.accept(result);
        });
  }

  private void isAt(long entries, long of) {
    if (running.get()) {
      share.set(of == 0 ? 0 : (double) entries / of);
      saying.set(LedgerText.AUDIT_AT.with(Long.toString(entries), Long.toString(of)));
    }
  }

  private void failed(String what) {
    running.set(false);
    verdict.set(AuditVerdict.FAILED);
    saying.set(what);
  }

  private static String idle() {
    return LedgerText.AUDIT_IDLE.with();
  }
}
