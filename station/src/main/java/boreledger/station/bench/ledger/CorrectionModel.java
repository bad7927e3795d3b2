package boreledger.station.bench.ledger;

import boreledger.station.app.EntryLine;
import boreledger.station.app.LedgerBook;
import boreledger.station.app.OpenedReading;
import boreledger.station.app.Standing;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.Text;
import boreledger.station.plan.Position;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.Correction.Done;
import java.time.Clock;
import java.util.function.LongConsumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Taking a reading back, letting it count again, or saying that it was taken somewhere else. */
public final class CorrectionModel {
  private final LedgerAround around;
  private final Asking doing;
  private final LongConsumer corrected;
  private final Reason reason;
  private final ObservableList<Position> places = FXCollections.observableArrayList();
  // Kept, since such a view forgets those who listen to it once nobody holds it.
  private final ObservableList<Position> placesToSee =
      FXCollections.unmodifiableObservableList(places);
  private final ObjectProperty<Position> place = new SimpleObjectProperty<>();
  private final ReadOnlyBooleanWrapper possible = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyBooleanWrapper restores = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyBooleanWrapper nowhere = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyStringWrapper placeProblem = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper done = new ReadOnlyStringWrapper("");
  private EntryLine line;
  private boolean busy;

  /**
   * Nothing to correct yet.
   *
   * @param reason why and who, as typed
   * @param corrected told the entry of the reading that was corrected
   */
  CorrectionModel(LedgerAround around, Reason reason, LongConsumer corrected) {
    this.around = around;
    this.reason = reason;
    this.corrected = corrected;
    doing = new Asking(around.reading(), around.around().screen(), this::failed);
  }

  /** The reading that may be corrected; what was typed stays. */
  void of(OpenedReading reading) {
    line = reading.line();
    place.set(null);
    places.setAll(reading.free());
    possible.set(true);
    restores.set(line.standing() == Standing.TAKEN_BACK);
    nowhere.set(places.isEmpty() && !restores.get() && !(line.position() instanceof SettingCheck));
  }

  /** Forgets the reading and the reason; the person stays. */
  void clear() {
    line = null;
    possible.set(false);
    place.set(null);
    places.clear();
    reason.clear();
    forgetAnswers();
  }

  /** Takes the reading back, or lets it count again; what stands in the way is told. */
  public void correct() {
    if (line == null || busy) {
      return;
    }
    forgetAnswers();
    if (reason.isGiven()) {
      long entry = line.entry().seq();
      boolean again = restores.get();
      LedgerBook book = around.book();
      String why = reason.why().get();
      String who = reason.who().get();
      Clock clock = around.clock();
      ask(
          () ->
              again ? book.restore(entry, why, who, clock) : book.takeBack(entry, why, who, clock),
          again ? LedgerText.RESTORED : LedgerText.STRUCK);
    }
  }

  /** Says that the reading was taken at the chosen place; what stands in the way is told. */
  public void move() {
    if (line == null || busy) {
      return;
    }
    forgetAnswers();
    Position to = place.get();
    placeProblem.set(to == null ? LedgerText.NEEDS_PLACE.with() : "");
    if (reason.isGiven() && to != null) {
      long entry = line.entry().seq();
      LedgerBook book = around.book();
      String why = reason.why().get();
      String who = reason.who().get();
      Clock clock = around.clock();
      ask(() -> book.move(entry, to.words(), why, who, clock), LedgerText.MOVED);
    }
  }

  /** Why and who, as typed. */
  public Reason reason() {
    return reason;
  }

  /** The places of the plan without a reading that stands, to which it can be moved. */
  public ObservableList<Position> places() {
    return placesToSee;
  }

  /** The place that was chosen; null while none is. */
  public ObjectProperty<Position> place() {
    return place;
  }

  /** Whether it could be moved if a place of the plan were free. */
  public ReadOnlyBooleanProperty nowhere() {
    return nowhere.getReadOnlyProperty();
  }

  /** Whether there is a reading to correct. */
  public ReadOnlyBooleanProperty possible() {
    return possible.getReadOnlyProperty();
  }

  /** Whether the reading was taken back, so that it can count again. */
  public ReadOnlyBooleanProperty restores() {
    return restores.getReadOnlyProperty();
  }

  /** What is wrong with the place, in words; empty when nothing is known. */
  public ReadOnlyStringProperty placeProblem() {
    return placeProblem.getReadOnlyProperty();
  }

  /** What stands in the way otherwise, in words; empty when nothing is known. */
  public ReadOnlyStringProperty problem() {
    return problem.getReadOnlyProperty();
  }

  /** What was done, in words; empty before. */
  public ReadOnlyStringProperty done() {
    return done.getReadOnlyProperty();
  }

  private void forgetAnswers() {
    placeProblem.set("");
    problem.set("");
    done.set("");
  }

  private void ask(Question<Done> question, Text told) {
    busy = true;
    doing.ask(
        question,
        made -> {
          busy = false;
          reason.clear();
          done.set(told.with(Long.toString(made.entry())));
          corrected.accept(made.reading());
        });
  }

  private void failed(String what) {
    busy = false;
    problem.set(what);
  }
}
