package boreledger.station.bench.ledger;

import boreledger.station.bench.look.Card;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.LedgerText;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;

/** The opened reading: what is known of it, its budget, its samples, and correcting it. */
final class ReadingPane extends VBox {
  private final Label title = Words.label("ledger-reading", Styles.CARD_TITLE);
  private final FactsGrid facts = new FactsGrid();
  private final FactsGrid budget = new FactsGrid();
  private final Label noBudget = Words.label(null, Styles.MUTED);
  private final ListView<ReadingFacts.SampleWords> samples = new ListView<>();
  private final Button back = new Button(LedgerText.READING_BACK.with());

  ReadingPane(SessionModel model) {
    getStyleClass().add(Styles.LEDGER_SIDE);
    back.setId("ledger-back");
    back.setMinWidth(USE_PREF_SIZE);
    back.setOnAction(pressed -> model.close());
    noBudget.setText(LedgerText.READING_NO_BUDGET.with());
    HBox head = new HBox(back, title);
    head.getStyleClass().add(Styles.LEDGER_HEAD);
    Card known = new Card(LedgerText.READING_FACTS.with(), facts);
    Card uncertainty = new Card(LedgerText.READING_BUDGET.with(), budget, noBudget);
    GridPane halves = new GridPane();
    halves.getStyleClass().add(Styles.LEDGER_COLUMNS);
    halves.getColumnConstraints().addAll(half(), half());
    RowConstraints row = new RowConstraints();
    row.setVgrow(Priority.ALWAYS);
    halves.getRowConstraints().add(row);
    VBox left = new VBox(scrolled("ledger-facts", known), samples());
    left.getStyleClass().add(Styles.LEDGER_SIDE);
    CorrectionPane correction = new CorrectionPane(model.correction(), model.words());
    VBox right =
        new VBox(
            Showing.when(model.correction().possible(), correction),
            Showing.when(model.correction().possible(), scrolled("ledger-budget", uncertainty)));
    right.getStyleClass().add(Styles.LEDGER_SIDE);
    halves.add(left, 0, 0);
    halves.add(right, 1, 0);
    VBox.setVgrow(halves, Priority.ALWAYS);
    getChildren().addAll(head, halves);
    model.facts().subscribe(this::show);
  }

  void focus() {
    back.requestFocus();
  }

  private void show(ReadingFacts reading) {
    title.setText(reading == null ? "" : reading.title());
    facts.show(reading == null ? List.of() : reading.facts());
    budget.show(reading == null ? List.of() : reading.budget());
    boolean none = reading == null || reading.budget().isEmpty();
    show(noBudget, none);
    show(budget, !none);
    samples.getItems().setAll(reading == null ? List.of() : reading.samples());
  }

  private static void show(Node node, boolean shown) {
    node.setVisible(shown);
    node.setManaged(shown);
  }

  private static ScrollPane scrolled(String id, Card card) {
    ScrollPane scroll = new ScrollPane(card);
    scroll.setId(id);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add(Styles.LEDGER_SCROLL);
    // A scroll pane would ask for the height of words that do not wrap.
    scroll.prefHeightProperty().bind(card.heightProperty().add(1));
    VBox.setVgrow(scroll, Priority.SOMETIMES);
    return scroll;
  }

  private Card samples() {
    samples.setId("ledger-samples");
    samples.getStyleClass().add(Styles.LEDGER_LIST);
    samples.setAccessibleText(LedgerText.READING_SAMPLES.with());
    samples.setCellFactory(view -> new SampleCell());
    VBox.setVgrow(samples, Priority.ALWAYS);
    Card card = new Card(LedgerText.READING_SAMPLES.with(), samples);
    card.getStyleClass().add(Styles.LEDGER_SAMPLES);
    VBox.setVgrow(card, Priority.ALWAYS);
    return card;
  }

  private static ColumnConstraints half() {
    ColumnConstraints column = new ColumnConstraints();
    column.setPercentWidth(50);
    return column;
  }
}
