package boreledger.station.bench.ledger;

import boreledger.station.app.SessionLine;
import boreledger.station.bench.look.Field;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.LedgerText;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The sessions, to be searched and chosen from. */
final class SessionsPane extends VBox {
  private final LedgerModel model;
  private final ListView<SessionLine> list;

  SessionsPane(LedgerModel model, Runnable onward) {
    this.model = model;
    getStyleClass().add(Styles.LEDGER_SIDE);
    list = new ListView<>(model.sessions());
    list.setId("ledger-sessions");
    list.getStyleClass().add(Styles.LEDGER_LIST);
    list.setAccessibleText(LedgerText.SESSIONS.with());
    list.setCellFactory(view -> new SessionCell(new SessionWords(model.moments()), session -> ""));
    list.setPlaceholder(none());
    list.getSelectionModel().selectedItemProperty().subscribe(model::choose);
    list.setOnKeyPressed(
        pressed -> {
          if (pressed.getCode() == KeyCode.ENTER) {
            onward.run();
            pressed.consume();
          }
        });
    list.setOnMouseClicked(clicked -> list.requestFocus());
    VBox.setVgrow(list, Priority.ALWAYS);
    model.sessions().addListener((ListChangeListener<SessionLine>) change -> keepChosen());
    model.session().subscribe(chosen -> keepChosen());
    Button older = new Button(LedgerText.SESSIONS_MORE.with());
    older.setId("ledger-older");
    older.setMaxWidth(Double.MAX_VALUE);
    older.setOnAction(pressed -> model.findMore());
    getChildren().addAll(search(), list, Showing.when(model.more(), older));
  }

  void focus() {
    list.requestFocus();
  }

  private Field search() {
    TextField search = new TextField();
    search.setId("ledger-search");
    search.setPromptText(LedgerText.SEARCH_PROMPT.with());
    search.textProperty().bindBidirectional(model.search());
    search.setOnAction(pressed -> list.requestFocus());
    return new Field(LedgerText.SEARCH.with(), search);
  }

  private Label none() {
    Label none = Words.label("ledger-no-sessions", Styles.LEDGER_NONE);
    model
        .listed()
        .subscribe(
            listed ->
                none.setText((listed ? LedgerText.SESSIONS_NONE : LedgerText.LOOKING).with()));
    return none;
  }

  private void keepChosen() {
    SessionLine chosen = model.session().get();
    if (chosen == null) {
      return;
    }
    for (int i = 0; i < list.getItems().size(); i++) {
      if (list.getItems().get(i).id() == chosen.id()) {
        list.getSelectionModel().clearAndSelect(i);
        return;
      }
    }
  }
}
