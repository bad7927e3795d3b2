package boreledger.station.bench.ledger;

import boreledger.station.app.LedgerBook;
import boreledger.station.app.SessionLine;
import boreledger.station.app.SessionSearch;
import java.nio.file.Path;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** What is seen of the ledger. It belongs to the screen's thread. */
public final class LedgerModel {
  /** How many sessions are listed at once. */
  static final int SESSIONS = 50;

  private final LedgerAround around;
  private final Asking listing;
  private final ObjectProperty<LedgerPart> part = new SimpleObjectProperty<>(LedgerPart.SESSIONS);
  private final StringProperty search = new SimpleStringProperty("");
  private final ObservableList<SessionLine> sessions = FXCollections.observableArrayList();
  // Kept, since such a view forgets those who listen to it once nobody holds it.
  private final ObservableList<SessionLine> sessionsToSee =
      FXCollections.unmodifiableObservableList(sessions);
  private final ReadOnlyBooleanWrapper more = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyBooleanWrapper listed = new ReadOnlyBooleanWrapper(false);
  private final ReadOnlyObjectWrapper<SessionLine> session = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
  private final SessionModel entries;
  private final ComparisonModel comparison;
  private final AuditModel audit;
  private final SheetModel sheet;
  private final ExportModel export;

  /** A room in which nothing was looked at yet. */
  public LedgerModel(LedgerAround around) {
    this.around = around;
    listing = new Asking(around.reading(), around.around().screen(), problem::set);
    entries = new SessionModel(around, problem::set);
    comparison = new ComparisonModel(around);
    audit = new AuditModel(around);
    sheet = new SheetModel(around);
    export = new ExportModel(around);
    search.subscribe(typed -> find());
    around.around().workshop().addListener((ledger, before, now) -> forget());
  }

  /** Looks at the ledger anew; what was shown stays, as far as it is still there. */
  public void entered() {
    find();
    comparison.entered();
    if (session.get() != null) {
      entries.show(session.get());
    }
  }

  /** Lists more sessions, older ones. */
  public void findMore() {
    if (!sessions.isEmpty()) {
      list(sessions.get(sessions.size() - 1).id());
    }
  }

  /** Shows what was said in a session; null for none. */
  public void choose(SessionLine chosen) {
    if (chosen == null || session.get() != null && session.get().id() == chosen.id()) {
      return;
    }
    session.set(chosen);
    entries.show(chosen);
    sheet.job().set(chosen.opened().jobName());
    export.session().set(chosen);
  }

  /** The ledger's file. */
  public Path ledger() {
    return around.ledger();
  }

  /** How points in time are shown. */
  Moments moments() {
    return new Moments(around.clock().getZone());
  }

  /** Which part of the room is shown. */
  public ObjectProperty<LedgerPart> part() {
    return part;
  }

  /** What sessions are searched by, as typed. */
  public StringProperty search() {
    return search;
  }

  /** The sessions found, newest first. */
  public ObservableList<SessionLine> sessions() {
    return sessionsToSee;
  }

  /** Whether there are older sessions than those listed. */
  public ReadOnlyBooleanProperty more() {
    return more.getReadOnlyProperty();
  }

  /** Whether the list is an answer to the search; false while it is looked for. */
  public ReadOnlyBooleanProperty listed() {
    return listed.getReadOnlyProperty();
  }

  /** The session that is shown; null while none is. */
  public ReadOnlyObjectProperty<SessionLine> session() {
    return session.getReadOnlyProperty();
  }

  /** What went wrong, in words; empty when nothing is known. */
  public ReadOnlyStringProperty problem() {
    return problem.getReadOnlyProperty();
  }

  /** What was said in the session. */
  public SessionModel entries() {
    return entries;
  }

  /** Two sessions held against each other. */
  public ComparisonModel comparison() {
    return comparison;
  }

  /** Checking and sealing. */
  public AuditModel audit() {
    return audit;
  }

  /** The build sheet. */
  public SheetModel sheet() {
    return sheet;
  }

  /** Handing out readings or the chain. */
  public ExportModel export() {
    return export;
  }

  private void forget() {
    sessions.clear();
    more.set(false);
    session.set(null);
    entries.clear();
    comparison.clear();
    audit.clear();
    sheet.clear();
    export.clear();
    find();
  }

  private void find() {
    listed.set(false);
    list(LedgerBook.END);
  }

  private void list(long before) {
    problem.set("");
    LedgerBook book = around.book();
    SessionSearch wanted = SessionSearch.of(search.get(), around.clock().getZone());
    listing.ask(
        () -> book.sessions(wanted, before, SESSIONS),
        page -> {
          if (before == LedgerBook.END) {
            sessions.setAll(page.lines());
          } else {
            sessions.addAll(page.lines());
          }
          more.set(page.more());
          listed.set(true);
          if (session.get() == null && !sessions.isEmpty()) {
            choose(sessions.get(0));
          }
        });
  }
}
