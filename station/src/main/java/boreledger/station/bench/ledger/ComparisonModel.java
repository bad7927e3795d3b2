package boreledger.station.bench.ledger;

import boreledger.station.app.CompareSessions;
import boreledger.station.app.LedgerBook;
import boreledger.station.app.SessionLine;
import boreledger.station.app.SessionSearch;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.job.DisplayUnit;
import boreledger.station.results.SessionComparison;
import boreledger.station.wording.LengthFormat;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * Choosing two sessions and holding them against each other. Either may stand in this ledger or in
 * another one, whose file is typed or chosen.
 */
public final class ComparisonModel {
  private final LedgerAround around;
  private final Asking listing;
  private final Asking comparing;
  private final StringProperty search = new SimpleStringProperty("");
  private final StringProperty file = new SimpleStringProperty("");
  private final ObservableList<SessionLine> sessions = FXCollections.observableArrayList();
  // Kept, since such a view forgets those who listen to it once nobody holds it.
  private final ObservableList<SessionLine> sessionsToSee =
      FXCollections.unmodifiableObservableList(sessions);
  private final ReadOnlyBooleanWrapper more = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyObjectWrapper<MarkedSession> before = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<MarkedSession> after = new ReadOnlyObjectWrapper<>();
  private final IntegerProperty cylinder = new SimpleIntegerProperty(1);
  private final ReadOnlyObjectWrapper<ComparisonPage> page = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
  private Compared compared;

  /** What was compared, and the unit that the first one's job wants. */
  private record Compared(SessionComparison comparison, DisplayUnit unit) {}

  ComparisonModel(LedgerAround around) {
    this.around = around;
    listing = new Asking(around.reading(), around.around().screen(), this::notListed);
    comparing = new Asking(around.reading(), around.around().screen(), problem::set);
    search.subscribe((old, now) -> list(LedgerBook.END));
    cylinder.subscribe((old, now) -> speak());
    around.around().appearance().unit().subscribe((old, now) -> speak());
  }

  /** Lists the sessions anew. */
  public void entered() {
    list(LedgerBook.END);
  }

  /** Forgets everything, since another ledger is shown. */
  void clear() {
    file.set("");
    sessions.clear();
    before.set(null);
    after.set(null);
    back();
    list(LedgerBook.END);
  }

  /** Lists the sessions of the file that was typed; of this ledger when none was. */
  public void openFile() {
    list(LedgerBook.END);
  }

  /** Lists older sessions as well. */
  public void listMore() {
    if (!sessions.isEmpty()) {
      list(sessions.get(sessions.size() - 1).id());
    }
  }

  /** Takes a session as the one before; null changes nothing. */
  public void markBefore(SessionLine line) {
    mark(line, before);
  }

  /** Takes a session as the one after; null changes nothing. */
  public void markAfter(SessionLine line) {
    mark(line, after);
  }

  /** Takes a session as whichever is not chosen yet; with both chosen, compares. */
  public void markNext(SessionLine line) {
    if (before.get() == null) {
      markBefore(line);
    } else if (after.get() == null) {
      markAfter(line);
    } else {
      compare();
    }
  }

  /** Takes each for the other. */
  public void swap() {
    MarkedSession first = before.get();
    before.set(after.get());
    after.set(first);
    if (compared != null) {
      compare();
    }
  }

  /** Compares the two; what stands in the way is told. */
  public void compare() {
    MarkedSession first = before.get();
    MarkedSession second = after.get();
    problem.set("");
    if (first == null || second == null) {
      problem.set(LedgerText.COMPARE_NEEDS_TWO.with());
      return;
    }
    comparing.ask(
        () ->
            new Compared(
                CompareSessions.of(
                    first.ledger(), first.line().id(), second.ledger(), second.line().id()),
                new LedgerBook(first.ledger()).manner(first.line().opened()).unit()),
        answer -> {
          compared = answer;
          speak();
        });
  }

  /** Goes back to choosing. */
  public void back() {
    comparing.forget();
    compared = null;
    page.set(null);
    problem.set("");
  }

  /** What sessions are searched by, as typed. */
  public StringProperty search() {
    return search;
  }

  /** The other ledger's file, as typed; blank for this one. */
  public StringProperty file() {
    return file;
  }

  /** The sessions to choose from, newest first. */
  public ObservableList<SessionLine> sessions() {
    return sessionsToSee;
  }

  /** Whether there are older ones. */
  public ReadOnlyBooleanProperty more() {
    return more.getReadOnlyProperty();
  }

  /** The one before; null while none is chosen. */
  public ReadOnlyObjectProperty<MarkedSession> before() {
    return before.getReadOnlyProperty();
  }

  /** The one after; null while none is chosen. */
  public ReadOnlyObjectProperty<MarkedSession> after() {
    return after.getReadOnlyProperty();
  }

  /** The cylinder that is shown, from 1. */
  public IntegerProperty cylinder() {
    return cylinder;
  }

  /** The comparison; null while the two are being chosen. */
  ReadOnlyObjectProperty<ComparisonPage> page() {
    return page.getReadOnlyProperty();
  }

  /** What stands in the way, in words; empty when nothing is known. */
  public ReadOnlyStringProperty problem() {
    return problem.getReadOnlyProperty();
  }

  /** How a listed session is marked: as before, as after, or not at all. */
  String marks(SessionLine line) {
    boolean first = before.get() != null && before.get().is(listed(), line);
    boolean second = after.get() != null && after.get().is(listed(), line);
    if (first && second) {
      return LedgerText.COMPARE_MARK_BOTH.with();
    } else if (first) {
      return LedgerText.COMPARE_MARK_BEFORE.with();
    }
    return second ? LedgerText.COMPARE_MARK_AFTER.with() : "";
  }

  /** How points in time are shown. */
  Moments moments() {
    return new Moments(around.clock().getZone());
  }

  private void mark(SessionLine line, ReadOnlyObjectWrapper<MarkedSession> as) {
    if (line != null) {
      problem.set("");
      as.set(new MarkedSession(listed(), line));
    }
  }

  private Path listed() {
    return file.get().isBlank() ? around.ledger() : Path.of(file.get().strip());
  }

  private void list(long from) {
    problem.set("");
    try {
      LedgerBook book = new LedgerBook(listed());
      SessionSearch wanted = SessionSearch.of(search.get(), around.clock().getZone());
      boolean other = !file.get().isBlank();
      listing.ask(
          () -> {
            // A ledger of one's own need not be there yet, one that was named must.
            if (other) {
              book.require();
            }
            return book.sessions(wanted, from, LedgerModel.SESSIONS);
          },
          found -> {
            if (from == LedgerBook.END) {
              sessions.setAll(found.lines());
            } else {
              sessions.addAll(found.lines());
            }
            more.set(found.more());
          });
    } catch (InvalidPathException e) {
      notListed(LedgerText.SHEET_BAD_FILE.with(e.getMessage()));
    }
  }

  private void notListed(String why) {
    sessions.clear();
    more.set(false);
    problem.set(why);
  }

  private void speak() {
    if (compared != null) {
      DisplayUnit chosen = around.around().appearance().unit().get();
      LengthFormat lengths = new LengthFormat(chosen == null ? compared.unit() : chosen);
      page.set(ComparisonPage.of(compared.comparison(), cylinder.get(), lengths));
    }
  }
}
