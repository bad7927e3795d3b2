package boreledger.station.bench.ledger;

import boreledger.station.app.EntryLine;
import boreledger.station.app.LedgerBook;
import boreledger.station.app.Standing;
import boreledger.station.bench.words.Text;
import java.time.Clock;
import java.util.function.LongConsumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Taking a reading back, or letting one that was taken back count again. */
public final class CorrectionModel {
  private final LedgerAround around;
  private final Asking doing;
  private final LongConsumer corrected;
  private final StringProperty why = new SimpleStringProperty("");
  private final StringProperty who = new SimpleStringProperty("");
  private final ReadOnlyBooleanWrapper possible = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyBooleanWrapper restores = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper done = new ReadOnlyStringWrapper("");
  private EntryLine line;
  private boolean busy;

  /**
   * Nothing to correct yet.
   *
   * @param corrected told the entry of the reading that was corrected
   */
  CorrectionModel(LedgerAround around, LongConsumer corrected) {
    this.around = around;
    this.corrected = corrected;
    doing = new Asking(around.reading(), around.around().screen(), this::failed);
  }

  /** The reading that may be corrected; what was typed stays. */
  void of(EntryLine reading) {
    line = reading;
    possible.set(true);
    restores.set(reading.standing() == Standing.TAKEN_BACK);
  }

  /** Forgets the reading and the reason; the person stays. */
  void clear() {
    line = null;
    possible.set(false);
    why.set("");
    problem.set("");
    done.set("");
  }

  /** Takes the reading back, or lets it count again; what stands in the way is told. */
  public void correct() {
    if (line == null || busy) {
      return;
    }
    done.set("");
    problem.set(missing());
    if (problem.get().isEmpty()) {
      busy = true;
      append(line.entry().seq(), restores.get(), around.book());
    }
  }

  /** The reason, as typed. */
  public StringProperty why() {
    return why;
  }

  /** The person, as typed. */
  public StringProperty who() {
    return who;
  }

  /** Whether there is a reading to correct. */
  public ReadOnlyBooleanProperty possible() {
    return possible.getReadOnlyProperty();
  }

  /** Whether the reading was taken back, so that it can count again. */
  public ReadOnlyBooleanProperty restores() {
    return restores.getReadOnlyProperty();
  }

  /** What stands in the way, in words; empty when nothing is known. */
  public ReadOnlyStringProperty problem() {
    return problem.getReadOnlyProperty();
  }

  /** What was done, in words; empty before. */
  public ReadOnlyStringProperty done() {
    return done.getReadOnlyProperty();
  }

  private String missing() {
    if (around.gauging().getAsBoolean()) {
      return Text.LEDGER_BUSY.with();
    } else if (why.get().isBlank()) {
      return Text.LEDGER_NEEDS_WHY.with();
    }
    return who.get().isBlank() ? Text.LEDGER_NEEDS_WHO.with() : "";
  }

  private void append(long entry, boolean again, LedgerBook book) {
    String reason = why.get();
    String person = who.get();
    Clock clock = around.clock();
    doing.ask(
        () ->
            again
                ? book.restore(entry, reason, person, clock)
                : book.takeBack(entry, reason, person, clock),
        made -> {
          busy = false;
          why.set("");
          done.set(
              (again ? Text.LEDGER_RESTORED : Text.LEDGER_STRUCK)
                  .with(Long.toString(made.entry())));
          corrected.accept(entry);
        });
  }

  private void failed(String what) {
    busy = false;
    problem.set(what);
  }
}
