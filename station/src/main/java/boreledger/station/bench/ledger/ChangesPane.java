package boreledger.station.bench.ledger;

import boreledger.station.bench.look.CylinderChoice;
import boreledger.station.bench.look.FigureView;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.WindowText;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableView;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;

/** What changed between the two sessions: a figure, a table, and what to mind. */
final class ChangesPane extends VBox {
  private static final double[] WIDTHS_PERCENT = {38, 62};

  private final ComparisonModel model;
  private final SessionWords words;
  private final Label title = Words.label("ledger-changes-title", Styles.MUTED);
  private final Label cautions = Words.label("ledger-changes-cautions", Styles.PROBLEM);
  private final Label missing = Words.label("ledger-changes-missing", Styles.MUTED);
  private final CylinderChoice cylinders;
  private final FigureView figure = new FigureView("ledger-changes-figure", 1);
  private final TableView<ComparisonPage.Row> table = new TableView<>();

  ChangesPane(ComparisonModel model, SessionWords words) {
    this.model = model;
    this.words = words;
    this.cylinders = new CylinderChoice(model.cylinder());
    getStyleClass().add(Styles.LEDGER_SIDE);
    Button back = new Button(LedgerText.COMPARE_BACK.with());
    back.setId("ledger-compare-back");
    back.setMinWidth(USE_PREF_SIZE);
    back.setOnAction(pressed -> model.back());
    Button swap = new Button(LedgerText.COMPARE_SWAP.with());
    swap.setId("ledger-changes-swap");
    swap.setMinWidth(USE_PREF_SIZE);
    swap.setOnAction(pressed -> model.swap());
    HBox.setHgrow(cylinders, Priority.ALWAYS);
    HBox head = new HBox(back, swap, cylinders);
    head.getStyleClass().add(Styles.LEDGER_HEAD);
    GridPane both = both();
    VBox.setVgrow(both, Priority.ALWAYS);
    cautions.managedProperty().bind(cautions.textProperty().isNotEmpty());
    missing.managedProperty().bind(missing.textProperty().isNotEmpty());
    getChildren().addAll(head, title, cautions, both, missing);
    model.page().subscribe(this::show);
  }

  void focus() {
    table.requestFocus();
    if (!table.getItems().isEmpty()) {
      table.getSelectionModel().select(0);
      table.getFocusModel().focus(0);
    }
  }

  private GridPane both() {
    table.setId("ledger-changes");
    table.getStyleClass().add(Styles.LEDGER_LIST);
    table.setAccessibleText(LedgerText.COMPARE_TABLE.with());
    Label none = Words.label(null, Styles.LEDGER_NONE);
    none.setText(LedgerText.COMPARE_NONE.with());
    table.setPlaceholder(none);
    new ChangeColumns(table, title).add();
    GridPane both = new GridPane();
    both.getStyleClass().add(Styles.LEDGER_COLUMNS);
    for (double percent : WIDTHS_PERCENT) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(percent);
      both.getColumnConstraints().add(column);
    }
    RowConstraints row = new RowConstraints();
    row.setVgrow(Priority.ALWAYS);
    row.setPercentHeight(100);
    both.getRowConstraints().add(row);
    both.add(figure, 0, 0);
    both.add(table, 1, 0);
    both.setMinHeight(0);
    return both;
  }

  private void show(ComparisonPage page) {
    if (page == null) {
      figure.show(null, null);
      table.getItems().clear();
      return;
    }
    String what =
        LedgerText.COMPARE_OF.with(
            words.marked(model.before().get()),
            words.marked(model.after().get()),
            page.figure().lengths().symbol());
    title.setText(what);
    cautions.setText(lines(page.cautions().stream().map(WindowText.CAUTION::with).toList()));
    List<String> below = new ArrayList<>(List.of(LedgerText.COMPARE_BARS.with()));
    below.addAll(page.missing());
    missing.setText(lines(below));
    cylinders.show(page.verdicts());
    table.getItems().setAll(page.rows());
    List<String> spoken = new ArrayList<>();
    page.rows().forEach(row -> spoken.add(row.spoken()));
    figure.show(page.figure(), LedgerText.COMPARE_FIGURE.with(what, String.join(" ", spoken)));
  }

  private static String lines(List<String> sentences) {
    return String.join("\n", sentences);
  }
}
