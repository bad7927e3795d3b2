package boreledger.station.bench.ledger;

import boreledger.station.app.SessionLine;
import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.Text;
import java.io.File;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** Where the two sessions are chosen. */
final class MarkingPane extends HBox {
  private final ComparisonModel model;
  private final SessionWords words;
  private final ListView<SessionLine> list;

  MarkingPane(ComparisonModel model, SessionWords words) {
    this.model = model;
    this.words = words;
    this.list = list();
    getStyleClass().add(Styles.LEDGER_HEAD);
    setFillHeight(true);
    TextField search = new TextField();
    search.setId("ledger-compare-search");
    search.setPromptText(LedgerText.SEARCH_PROMPT.with());
    search.textProperty().bindBidirectional(model.search());
    search.setOnAction(pressed -> list.requestFocus());
    Button older = button("ledger-compare-older", LedgerText.SESSIONS_MORE, model::listMore);
    older.setMaxWidth(Double.MAX_VALUE);
    VBox side =
        new VBox(
            new Field(LedgerText.SEARCH.with(), search), list, Showing.when(model.more(), older));
    side.getStyleClass().addAll(Styles.LEDGER_SIDE, Styles.LEDGER_SESSIONS);
    side.setMaxHeight(Double.MAX_VALUE);
    VBox.setVgrow(list, Priority.ALWAYS);
    ScrollPane chosen = new ScrollPane(chosen());
    chosen.setFitToWidth(true);
    chosen.setFocusTraversable(false);
    chosen.setMaxHeight(Double.MAX_VALUE);
    chosen.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    HBox.setHgrow(chosen, Priority.ALWAYS);
    getChildren().addAll(side, chosen);
  }

  void focus() {
    list.requestFocus();
  }

  private ListView<SessionLine> list() {
    ListView<SessionLine> made = new ListView<>(model.sessions());
    made.setId("ledger-compare-sessions");
    made.getStyleClass().add(Styles.LEDGER_LIST);
    made.setAccessibleText(LedgerText.COMPARE_SESSIONS.with());
    made.setCellFactory(view -> new SessionCell(words, model::marks));
    Label none = Words.label(null, Styles.LEDGER_NONE);
    none.setText(LedgerText.SESSIONS_NONE.with());
    made.setPlaceholder(none);
    made.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    // Whoever comes by keyboard has something to mark at once.
    made.focusedProperty()
        .subscribe(
            now -> {
              if (now && selected() == null) {
                made.getSelectionModel().selectFirst();
                made.getFocusModel().focus(0);
              }
            });
    model.before().subscribe(now -> made.refresh());
    model.after().subscribe(now -> made.refresh());
    return made;
  }

  /** The selected session; null for none. A list keeps one selected that it lists no more. */
  private SessionLine selected() {
    int index = list.getSelectionModel().getSelectedIndex();
    SessionLine line = list.getSelectionModel().getSelectedItem();
    return index >= 0 && list.getItems().contains(line) ? line : null;
  }

  private void pressed(KeyEvent pressed) {
    SessionLine line = selected();
    boolean plain = !pressed.isControlDown() && !pressed.isAltDown() && !pressed.isMetaDown();
    switch (pressed.getCode()) {
      case DIGIT1, NUMPAD1 -> doAndConsume(pressed, plain, () -> model.markBefore(line));
      case DIGIT2, NUMPAD2 -> doAndConsume(pressed, plain, () -> model.markAfter(line));
      case ENTER -> doAndConsume(pressed, plain, () -> model.markNext(line));
      default -> {
        // Everything else moves in the list.
      }
    }
  }

  private static void doAndConsume(KeyEvent pressed, boolean plain, Runnable work) {
    if (plain) {
      work.run();
      pressed.consume();
    }
  }

  private Card chosen() {
    Button first = button("ledger-mark-before", LedgerText.COMPARE_TAKE_BEFORE, () -> {});
    first.setOnAction(pressed -> model.markBefore(selected()));
    Button second = button("ledger-mark-after", LedgerText.COMPARE_TAKE_AFTER, () -> {});
    second.setOnAction(pressed -> model.markAfter(selected()));
    Button swap = button("ledger-swap", LedgerText.COMPARE_SWAP, model::swap);
    Button compare = button("ledger-compare", LedgerText.COMPARE_DO, model::compare);
    compare.getStyleClass().add(Styles.MAIN_BUTTON);
    Label hint = Words.label(null, Styles.MUTED);
    hint.setText(LedgerText.COMPARE_HINT.with());
    return new Card(
        LedgerText.COMPARE_TITLE.with(),
        hint,
        named(LedgerText.COMPARE_BEFORE, "ledger-compare-before", model.before()),
        named(LedgerText.COMPARE_AFTER, "ledger-compare-after", model.after()),
        row(first, second, swap),
        compare,
        new OtherLedger(model));
  }

  private Label named(Text text, String id, ObservableValue<MarkedSession> marked) {
    Label label = Words.label(id, Styles.FIELD_NAME);
    marked.subscribe(now -> label.setText(text.with(words.marked(now))));
    return label;
  }

  private static FlowPane row(Button... buttons) {
    FlowPane row = new FlowPane(buttons);
    row.getStyleClass().add(Styles.CHOICES);
    return row;
  }

  private static Button button(String id, Text words, Runnable pressed) {
    Button button = new Button(words.with());
    button.setId(id);
    button.setMinWidth(USE_PREF_SIZE);
    button.setOnAction(event -> pressed.run());
    return button;
  }

  /** Where sessions of another ledger are listed. */
  private static final class OtherLedger extends VBox {
    private final ComparisonModel model;

    OtherLedger(ComparisonModel model) {
      this.model = model;
      getStyleClass().add(Styles.FIELDS);
      TextField file = new TextField();
      file.setId("ledger-compare-file");
      file.textProperty().bindBidirectional(model.file());
      file.setOnAction(entered -> model.openFile());
      Button open = button("ledger-compare-open", LedgerText.COMPARE_OPEN, model::openFile);
      Button choose = button("ledger-compare-choose", LedgerText.SHEET_CHOOSE, this::choose);
      Button own =
          button(
              "ledger-compare-own",
              LedgerText.COMPARE_OWN,
              () -> {
                model.file().set("");
                model.openFile();
              });
      getChildren().addAll(new Field(LedgerText.COMPARE_FILE.with(), file), row(open, choose, own));
    }

    private void choose() {
      FileChooser chooser = new FileChooser();
      chooser.setTitle(LedgerText.COMPARE_FILE.with());
      File chosen = chooser.showOpenDialog(getScene().getWindow());
      if (chosen != null) {
        model.file().set(chosen.toString());
        model.openFile();
      }
    }
  }
}
