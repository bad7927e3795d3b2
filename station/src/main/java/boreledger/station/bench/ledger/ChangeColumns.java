package boreledger.station.bench.ledger;

import boreledger.station.bench.ledger.ComparisonPage.Row;
import boreledger.station.bench.look.Styles;
import boreledger.station.bench.words.LedgerText;
import boreledger.station.bench.words.Text;
import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.control.Label;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;

/** The columns of a comparison. */
final class ChangeColumns {
  private static final double[] SHARES = {0.24, 0.15, 0.15, 0.23, 0.23};
  private static final double BAR_EM = 1.8;

  private final TableView<Row> table;
  private final Label oneEm;

  /**
   * Columns of a table.
   *
   * @param oneEm a label whose font is one em
   */
  ChangeColumns(TableView<Row> table, Label oneEm) {
    this.table = table;
    this.oneEm = oneEm;
  }

  void add() {
    List<TableColumn<Row, Row>> columns =
        List.of(
            column(LedgerText.COMPARE_COLUMN_WHAT, Row::what),
            column(LedgerText.COMPARE_COLUMN_BEFORE, Row::before),
            column(LedgerText.COMPARE_COLUMN_AFTER, Row::after),
            column(LedgerText.COMPARE_COLUMN_CHANGE, Row::change),
            column(LedgerText.COMPARE_COLUMN_JUDGED, Row::judged));
    columns.forEach(table.getColumns()::add);
    table.setRowFactory(
        view -> {
          TableRow<Row> row = new TableRow<>();
          row.getStyleClass().add(Styles.LEDGER_ROW);
          return row;
        });
    Runnable fit =
        () -> {
          double widePx = table.getWidth() - BAR_EM * oneEm.getFont().getSize();
          for (int i = 0; i < SHARES.length; i++) {
            columns.get(i).setPrefWidth(SHARES[i] * widePx);
          }
        };
    table.widthProperty().subscribe(fit);
    oneEm.fontProperty().subscribe(fit);
  }

  private static TableColumn<Row, Row> column(Text title, Function<Row, String> said) {
    TableColumn<Row, Row> column = new TableColumn<>(title.with());
    column.setSortable(false);
    column.setReorderable(false);
    column.setMinWidth(1);
    column.setCellValueFactory(row -> new ReadOnlyObjectWrapper<>(row.getValue()));
    column.setCellFactory(made -> new Cell(said));
    return column;
  }

  private static final class Cell extends TableCell<Row, Row> {
    private final Function<Row, String> said;

    Cell(Function<Row, String> said) {
      this.said = said;
      getStyleClass().add(Styles.LEDGER_CELL);
    }

    @Override
    protected void updateItem(Row row, boolean empty) {
      super.updateItem(row, empty);
      setText(null);
      if (empty || row == null) {
        setGraphic(null);
        setAccessibleText(null);
        return;
      }
      String words = said.apply(row);
      setGraphic(
          row.changed()
              ? Wrapped.words(this, words, 0, Styles.LEDGER_WORDS, Styles.LEDGER_STRONG)
              : Wrapped.words(this, words, 0, Styles.LEDGER_WORDS));
      setAccessibleText(words);
    }
  }
}
