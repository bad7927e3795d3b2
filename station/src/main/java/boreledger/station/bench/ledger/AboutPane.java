package boreledger.station.bench.ledger;

import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.LedgerText;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;

/** What is known of the session, and the form that amends its temperatures. */
final class AboutPane extends VBox {
  private final Button back = new Button(LedgerText.READING_BACK.with());
  private final FactsGrid facts = new FactsGrid();

  AboutPane(LedgerModel room) {
    AboutModel model = room.entries().about();
    getStyleClass().add(Styles.LEDGER_SIDE);
    back.setId("ledger-about-back");
    back.setMinWidth(USE_PREF_SIZE);
    back.setOnAction(pressed -> room.entries().close());
    Label title = Words.label("ledger-about-title", Styles.CARD_TITLE);
    SessionWords words = new SessionWords(room.moments());
    room.session()
        .subscribe(
            session ->
                title.setText(
                    session == null
                        ? ""
                        : words.title(session) + " \u2013 " + words.when(session)));
    HBox head = new HBox(back, title);
    head.getStyleClass().add(Styles.LEDGER_HEAD);
    GridPane halves = new GridPane();
    halves.getStyleClass().add(Styles.LEDGER_COLUMNS);
    for (int i = 0; i < 2; i++) {
      ColumnConstraints half = new ColumnConstraints();
      half.setPercentWidth(50);
      halves.getColumnConstraints().add(half);
    }
    RowConstraints row = new RowConstraints();
    row.setVgrow(Priority.ALWAYS);
    halves.getRowConstraints().add(row);
    halves.add(
        scrolled("ledger-about-facts", new Card(LedgerText.READING_FACTS.with(), facts)), 0, 0);
    halves.add(scrolled("ledger-amending", form(model)), 1, 0);
    VBox.setVgrow(halves, Priority.ALWAYS);
    getChildren().addAll(head, halves);
    model.facts().subscribe(known -> facts.show(known == null ? List.of() : known.facts()));
  }

  void focus() {
    back.requestFocus();
  }

  private static Card form(AboutModel model) {
    Button amend = new Button(LedgerText.AMEND.with());
    amend.setId("ledger-amend");
    amend.setMinWidth(USE_PREF_SIZE);
    amend.setOnAction(pressed -> model.amend());
    Label hint = Words.label(null, Styles.MUTED);
    hint.setText(LedgerText.AMEND_HINT.with());
    HBox foot = new HBox(amend, hint);
    foot.getStyleClass().add(Styles.LEDGER_HEAD);
    HBox.setHgrow(hint, Priority.ALWAYS);
    return new Card(
        LedgerText.AMEND_TITLE.with(),
        AskedField.beside(
            AskedField.typed(
                LedgerText.SETTING_TEMP,
                "ledger-setting-temp",
                model.settingTemp(),
                model.settingProblem(),
                model::amend),
            AskedField.typed(
                LedgerText.BLOCK_TEMP,
                "ledger-block-temp",
                model.blockTemp(),
                model.blockProblem(),
                model::amend)),
        AskedField.typed(
            LedgerText.FROM_ENTRY,
            "ledger-from-entry",
            model.fromEntry(),
            model.fromProblem(),
            model::amend),
        AskedField.reason("ledger-amend-", model.reason(), model::amend),
        foot,
        Showing.words("ledger-amend-problem", model.problem(), Styles.PROBLEM),
        Showing.words("ledger-amend-done", model.done()));
  }

  private static ScrollPane scrolled(String id, Card card) {
    ScrollPane scroll = new ScrollPane(card);
    scroll.setId(id);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add(Styles.LEDGER_SCROLL);
    return scroll;
  }
}
