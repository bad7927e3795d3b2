package boreledger.station.bench.ledger;

import boreledger.station.app.EntryLine;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.LedgerText;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What was said in the chosen session, as a table. */
final class EntriesPane extends VBox {
  private final SessionModel model;
  private final Runnable back;
  private final TableView<EntryLine> table;
  private long selected;

  EntriesPane(LedgerModel room, Runnable back) {
    this.model = room.entries();
    this.back = back;
    getStyleClass().add(Styles.LEDGER_SIDE);
    SessionWords words = new SessionWords(room.moments());
    Label title = Words.label("ledger-session", Styles.CARD_TITLE);
    room.session().subscribe(session -> title.setText(session == null ? "" : words.title(session)));
    Label when = Words.label("ledger-session-when", Styles.MUTED);
    room.session().subscribe(session -> when.setText(session == null ? "" : words.when(session)));
    Button about = new Button(LedgerText.ABOUT.with());
    about.setId("ledger-about");
    about.setMinWidth(USE_PREF_SIZE);
    about.setOnAction(pressed -> model.openAbout());
    about.disableProperty().bind(room.session().isNull());
    when.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(when, Priority.ALWAYS);
    HBox line = new HBox(when, about);
    line.getStyleClass().add(Styles.LEDGER_HEAD);
    Label hint = Words.label("ledger-hint", Styles.MUTED);
    hint.setText(LedgerText.ENTRIES_HINT.with());
    table = table(hint);
    VBox.setVgrow(table, Priority.ALWAYS);
    Button earlier = new Button(LedgerText.ENTRIES_EARLIER.with());
    earlier.setId("ledger-earlier");
    earlier.setOnAction(pressed -> model.showEarlier());
    getChildren().addAll(title, line, Showing.when(model.more(), earlier), table, hint);
  }

  void focus() {
    table.requestFocus();
    if (table.getSelectionModel().isEmpty() && !table.getItems().isEmpty()) {
      table.getSelectionModel().select(0);
      table.getFocusModel().focus(0);
    }
  }

  private TableView<EntryLine> table(Label oneEm) {
    TableView<EntryLine> made = new TableView<>(model.lines());
    made.setId("ledger-entries");
    made.getStyleClass().add(Styles.LEDGER_LIST);
    made.setAccessibleText(LedgerText.ENTRIES.with());
    Label none = Words.label("ledger-no-entries", Styles.LEDGER_NONE);
    none.setText(LedgerText.ENTRIES_NONE.with());
    made.setPlaceholder(none);
    new EntryColumns(made, model.words(), oneEm).add();
    made.setRowFactory(view -> row());
    made.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    made.getSelectionModel()
        .selectedItemProperty()
        .subscribe(line -> selected = line == null ? selected : line.entry().seq());
    model.lines().addListener((ListChangeListener<EntryLine>) change -> keepSelected());
    model.words().subscribe(words -> made.refresh());
    return made;
  }

  private TableRow<EntryLine> row() {
    TableRow<EntryLine> row = new TableRow<>();
    row.getStyleClass().add(Styles.LEDGER_ROW);
    row.setOnMouseClicked(
        clicked -> {
          if (clicked.getClickCount() == 2) {
            model.open(row.getItem());
          }
        });
    return row;
  }

  private void pressed(KeyEvent pressed) {
    if (pressed.getCode() == KeyCode.ENTER) {
      model.open(table.getSelectionModel().getSelectedItem());
      pressed.consume();
    } else if (pressed.getCode() == KeyCode.ESCAPE) {
      back.run();
      pressed.consume();
    }
  }

  private void keepSelected() {
    for (int i = 0; i < table.getItems().size(); i++) {
      if (table.getItems().get(i).entry().seq() == selected) {
        table.getSelectionModel().clearAndSelect(i);
        return;
      }
    }
  }
}
