package boreledger.station.bench.ledger;

import boreledger.station.app.EntryWriter;
import boreledger.station.bench.look.Choice;
import boreledger.station.bench.look.Room;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Surroundings;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.LedgerText;
import java.time.Clock;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.function.BooleanSupplier;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;

/** Sessions and readings, the audit and the seal, the build sheet. */
public final class LedgerRoom {
  /** By which it is gone to. */
  public static final String ID = "ledger";

  private static final double PARTS_EM = 42;

  private final LedgerModel model;
  private final SessionsPane sessions;
  private final EntriesPane entries;
  private final ReadingPane reading;
  private final AboutPane about;

  private LedgerRoom(LedgerModel model) {
    this.model = model;
    this.sessions = new SessionsPane(model, this::toEntries);
    this.entries = new EntriesPane(model, this::toSessions);
    this.reading = new ReadingPane(model.entries());
    this.about = new AboutPane(model);
  }

  /**
   * The room, with threads of its own.
   *
   * @param changed told when something was corrected
   * @param gauging whether something is being gauged just now
   * @param writer writes corrections, whatever is being gauged
   */
  public static Room of(
      Surroundings around, Runnable changed, BooleanSupplier gauging, EntryWriter writer) {
    return of(
        new LedgerModel(
            new LedgerAround(
                around,
                thread("ledger reading"),
                thread("ledger working"),
                changed,
                gauging,
                writer,
                Clock.systemDefaultZone())));
  }

  /** The room of a model. */
  public static Room of(LedgerModel model) {
    return new LedgerRoom(model).room();
  }

  private Room room() {
    BooleanBinding inReading = model.entries().facts().isNotNull();
    BooleanBinding inAbout = model.entries().about().facts().isNotNull();
    BooleanBinding inEither = inReading.or(inAbout);
    BooleanBinding inSessions = model.part().isEqualTo(LedgerPart.SESSIONS);
    Node book = grown(Showing.when(inSessions.and(inEither.not()), book()));
    Node opened = grown(Showing.when(inSessions.and(inReading), reading));
    Node told = grown(Showing.when(inSessions.and(inAbout), about));
    Node compare =
        grown(
            Showing.when(
                model.part().isEqualTo(LedgerPart.COMPARE),
                new ComparisonPane(model.comparison(), () -> new SessionWords(model.moments()))));
    Node audit =
        grown(
            Showing.when(
                model.part().isEqualTo(LedgerPart.AUDIT), new AuditPane(model.audit(), file())));
    Node sheet = grown(Showing.when(model.part().isEqualTo(LedgerPart.SHEET), papers()));
    VBox view =
        new VBox(
            head(),
            Showing.words("ledger-problem", model.problem(), Styles.PROBLEM),
            book,
            opened,
            told,
            compare,
            audit,
            sheet);
    view.getStyleClass().add(Styles.ROOM);
    view.setOnKeyPressed(
        pressed -> {
          if (pressed.getCode() == KeyCode.ESCAPE && inEither.get()) {
            model.entries().close();
            pressed.consume();
          }
        });
    // Only what can be seen can have the focus.
    opened.visibleProperty().subscribe((before, now) -> focus(now, reading::focus));
    told.visibleProperty().subscribe((before, now) -> focus(now, about::focus));
    book.visibleProperty().subscribe((before, now) -> focus(now, entries::focus));
    return new Room(
        ID,
        LedgerText.ROOM.with(),
        view,
        () -> {
          model.entered();
          sessions.focus();
        });
  }

  private HBox head() {
    Map<LedgerPart, String> words = new EnumMap<>(LedgerPart.class);
    words.put(LedgerPart.SESSIONS, LedgerText.PART_SESSIONS.with());
    words.put(LedgerPart.COMPARE, LedgerText.PART_COMPARE.with());
    words.put(LedgerPart.AUDIT, LedgerText.PART_AUDIT.with());
    words.put(LedgerPart.SHEET, LedgerText.PART_SHEET.with());
    Choice<LedgerPart> parts = new Choice<>(words, model.part());
    Label file = Words.label("ledger-file", Styles.MUTED);
    file.textProperty()
        .bind(
            Bindings.createStringBinding(
                () -> model.ledger().getFileName().toString(), model.listed()));
    file.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(file, Priority.ALWAYS);
    parts.prefWrapLengthProperty().bind(file.fontProperty().map(font -> PARTS_EM * font.getSize()));
    parts.setMinWidth(Region.USE_PREF_SIZE);
    HBox head = new HBox(Words.fixed(LedgerText.TITLE.with(), Styles.ROOM_TITLE), file, parts);
    head.getStyleClass().add(Styles.LEDGER_HEAD);
    return head;
  }

  private ScrollPane papers() {
    GridPane papers = new GridPane();
    papers.getStyleClass().add(Styles.LEDGER_COLUMNS);
    for (int i = 0; i < 2; i++) {
      ColumnConstraints half = new ColumnConstraints();
      half.setPercentWidth(50);
      papers.getColumnConstraints().add(half);
    }
    papers.add(new SheetPane(model.sheet()), 0, 0);
    papers.add(new ExportPane(model.export()), 1, 0);
    ScrollPane scroll = new ScrollPane(papers);
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    return scroll;
  }

  private Label file() {
    Label file = Words.label(null, Styles.MUTED);
    file.textProperty()
        .bind(
            Bindings.createStringBinding(
                () -> LedgerText.FILE.with(model.ledger().toString()), model.listed()));
    return file;
  }

  private GridPane book() {
    GridPane book = new GridPane();
    book.getStyleClass().add(Styles.LEDGER_COLUMNS);
    RowConstraints row = new RowConstraints();
    row.setVgrow(Priority.ALWAYS);
    book.getRowConstraints().add(row);
    sessions.getStyleClass().add(Styles.LEDGER_SESSIONS);
    GridPane.setHgrow(entries, Priority.ALWAYS);
    book.add(sessions, 0, 0);
    book.add(entries, 1, 0);
    return book;
  }

  private static void focus(boolean shown, Runnable focus) {
    if (shown) {
      focus.run();
    }
  }

  private void toEntries() {
    entries.focus();
  }

  private void toSessions() {
    sessions.focus();
  }

  private static Node grown(Node node) {
    VBox.setVgrow(node, Priority.ALWAYS);
    return node;
  }

  private static Executor thread(String name) {
    return Executors.newSingleThreadExecutor(
        task -> {
          Thread thread = new Thread(task, name);
          thread.setDaemon(true);
          return thread;
        });
  }
}
