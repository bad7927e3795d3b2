package boreledger.station.bench.ledger;

import boreledger.station.app.LedgerBook;
import boreledger.station.app.OpenedSession;
import boreledger.station.app.SessionChange;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.job.draft.Kind;
import boreledger.station.job.draft.Numerals;
import boreledger.station.job.draft.Typed;
import boreledger.station.session.Change;
import java.math.BigDecimal;
import java.time.Clock;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What is known of a session besides its readings, and amending its temperatures. */
public final class AboutModel {
  private static final BigDecimal MOST_ENTRIES = BigDecimal.valueOf(Long.MAX_VALUE);

  private final LedgerAround around;
  private final Asking opening;
  private final Asking doing;
  private final Runnable corrected;
  private final Reason reason;
  private final StringProperty settingTemp = new SimpleStringProperty("");
  private final StringProperty blockTemp = new SimpleStringProperty("");
  private final StringProperty fromEntry = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper settingProblem = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper blockProblem = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper fromProblem = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper done = new ReadOnlyStringWrapper("");
  private final ReadOnlyObjectWrapper<SessionFacts> facts = new ReadOnlyObjectWrapper<>();
  private OpenedSession opened;
  private boolean busy;

  /**
   * Nothing is open yet.
   *
   * @param reason why and who, as typed
   * @param corrected told when the session was amended
   */
  AboutModel(LedgerAround around, Reason reason, Runnable corrected) {
    this.around = around;
    this.reason = reason;
    this.corrected = corrected;
    opening = new Asking(around.reading(), around.around().screen(), this::failed);
    doing = new Asking(around.reading(), around.around().screen(), this::failed);
  }

  /** Opens what is known of a session; what was typed stays. */
  void open(long session) {
    LedgerBook book = around.book();
    opening.ask(
        () -> book.session(session),
        found -> {
          opened = found;
          facts.set(SessionFacts.of(found, new Moments(around.clock().getZone())));
        });
  }

  /** Closes it and forgets what was typed; the person stays. */
  void close() {
    opening.forget();
    opened = null;
    facts.set(null);
    forgetTyped();
    forgetAnswers();
  }

  /** Amends the session's temperatures as typed; what stands in the way is told. */
  public void amend() {
    if (opened == null || busy) {
      return;
    }
    forgetAnswers();
    Double settingC = temperature(settingTemp, settingProblem);
    Double blockC = temperature(blockTemp, blockProblem);
    Long from = entry();
    boolean understood =
        settingProblem.get().isEmpty()
            && blockProblem.get().isEmpty()
            && fromProblem.get().isEmpty();
    if (understood && settingC == null && blockC == null) {
      settingProblem.set(LedgerText.NEEDS_TEMPERATURE.with());
      understood = false;
    }
    if (reason.isGiven() && understood) {
      write(new SessionChange(settingC, blockC, from, null));
    }
  }

  /** What is known; null while no session is open. */
  public ReadOnlyObjectProperty<SessionFacts> facts() {
    return facts.getReadOnlyProperty();
  }

  /** Why and who, as typed. */
  public Reason reason() {
    return reason;
  }

  /** The setting ring's temperature, as typed; blank when it stays. */
  public StringProperty settingTemp() {
    return settingTemp;
  }

  /** The block's temperature, as typed; blank when it stays. */
  public StringProperty blockTemp() {
    return blockTemp;
  }

  /** The number of the reading from which on they held, as typed; blank for the whole session. */
  public StringProperty fromEntry() {
    return fromEntry;
  }

  /** What is wrong with the setting ring's temperature, in words; empty when nothing is known. */
  public ReadOnlyStringProperty settingProblem() {
    return settingProblem.getReadOnlyProperty();
  }

  /** What is wrong with the block's temperature, in words; empty when nothing is known. */
  public ReadOnlyStringProperty blockProblem() {
    return blockProblem.getReadOnlyProperty();
  }

  /** What is wrong with the reading's number, in words; empty when nothing is known. */
  public ReadOnlyStringProperty fromProblem() {
    return fromProblem.getReadOnlyProperty();
  }

  /** What stands in the way otherwise, in words; empty when nothing is known. */
  public ReadOnlyStringProperty problem() {
    return problem.getReadOnlyProperty();
  }

  /** What was done, in words; empty before. */
  public ReadOnlyStringProperty done() {
    return done.getReadOnlyProperty();
  }

  private void write(SessionChange change) {
    long session = opened.session().id();
    LedgerBook book = around.book();
    String why = reason.why().get();
    String who = reason.who().get();
    Clock clock = around.clock();
    busy = true;
    doing.ask(
        () -> book.amend(session, change, why, who, clock),
        made -> {
          busy = false;
          forgetTyped();
          done.set(LedgerText.AMENDED.with(Long.toString(made.seq())));
          corrected.run();
        });
  }

  /** A temperature as typed; null for none, or with its problem told. */
  private static Double temperature(StringProperty typed, StringProperty problem) {
    Typed read = Numerals.read(Kind.CELSIUS, typed.get());
    if (read.isUnderstood() && read.numbers().isEmpty()) {
      return null;
    } else if (read.isUnderstood() && Change.canBe(read.numbers().get(0).doubleValue())) {
      return read.numbers().get(0).doubleValue();
    }
    problem.set(LedgerText.TEMPERATURE_WRONG.with(typed.get().strip()));
    return null;
  }

  private Long entry() {
    Typed read = Numerals.read(Kind.COUNT, fromEntry.get());
    if (read.isUnderstood() && read.numbers().isEmpty()) {
      return null;
    } else if (!read.isUnderstood() || read.numbers().get(0).compareTo(MOST_ENTRIES) > 0) {
      fromProblem.set(LedgerText.FROM_ENTRY_WRONG.with(fromEntry.get().strip()));
      return null;
    }
    return read.numbers().get(0).longValue();
  }

  private void forgetTyped() {
    settingTemp.set("");
    blockTemp.set("");
    fromEntry.set("");
    reason.clear();
  }

  private void forgetAnswers() {
    settingProblem.set("");
    blockProblem.set("");
    fromProblem.set("");
    problem.set("");
    done.set("");
  }

  private void failed(String what) {
    busy = false;
    problem.set(what);
  }
}
