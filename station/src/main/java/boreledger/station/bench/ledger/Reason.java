package boreledger.station.bench.ledger;

import boreledger.station.bench.words.LedgerText;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Why something is corrected and who says so, as typed, and what is missing of it. */
public final class Reason {
  private final StringProperty why = new SimpleStringProperty("");
  private final StringProperty who = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper whyProblem = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper whoProblem = new ReadOnlyStringWrapper("");

  Reason() {}

  /** Whether both are there; what is missing is told. */
  boolean isGiven() {
    whyProblem.set(why.get().isBlank() ? LedgerText.NEEDS_WHY.with() : "");
    whoProblem.set(who.get().isBlank() ? LedgerText.NEEDS_WHO.with() : "");
    return whyProblem.get().isEmpty() && whoProblem.get().isEmpty();
  }

  /** Forgets the reason; the person stays. */
  void clear() {
    why.set("");
    whyProblem.set("");
    whoProblem.set("");
  }

  /** The reason, as typed. */
  public StringProperty why() {
    return why;
  }

  /** The person, as typed. */
  public StringProperty who() {
    return who;
  }

  /** What is missing of the reason, in words; empty when nothing is known. */
  public ReadOnlyStringProperty whyProblem() {
    return whyProblem.getReadOnlyProperty();
  }

  /** What is missing of the person, in words; empty when nothing is known. */
  public ReadOnlyStringProperty whoProblem() {
    return whoProblem.getReadOnlyProperty();
  }
}
