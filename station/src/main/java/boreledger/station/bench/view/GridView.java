package boreledger.station.bench.view;

import boreledger.station.bench.look.Styles;
import boreledger.station.bench.look.TextWidth;
import boreledger.station.bench.look.Words;
import boreledger.station.bench.model.Grid;
import boreledger.station.bench.model.Grid.Cell;
import boreledger.station.bench.model.Grid.Row;
import boreledger.station.bench.words.BenchText;
import boreledger.station.plan.Position;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The cylinder's readings: depths downwards, axes across. Its letters fit its room. */
final class GridView extends VBox {
  private static final double PADDING_EM = 1;
  private static final double ROW_EM = 2.1;
  private static final double LARGEST_EM = 1.5;
  private static final String WIDEST_NUMBER = "00.0000";

  private final Label title = Words.label("grid-title");
  private final GridPane table = new GridPane();
  private final Consumer<Position> goTo;
  private double widthEm;
  private int rows;

  GridView(ObservableValue<Grid> grids, Consumer<Position> goTo) {
    this.goTo = goTo;
    setId("grid");
    getStyleClass().add(Styles.GRID);
    table.setId("grid-table");
    table.setMinSize(0, 0);
    VBox.setVgrow(table, Priority.ALWAYS);
    getChildren().addAll(title, table);
    table.widthProperty().addListener(changed -> fit());
    table.heightProperty().addListener(changed -> fit());
    grids.subscribe(this::show);
    table.addEventFilter(KeyEvent.KEY_PRESSED, new CellKeys(table)::pressed);
  }

  private void show(Grid grid) {
    CellKeys.At focused = CellKeys.focused(table);
    title.setText(grid.title());
    table.getChildren().clear();
    rows = grid.rows().size();
    columns(grid);
    if (rows > 0) {
      table.addRow(0, head(BenchText.GRID_DEPTH.with()));
      grid.columns().forEach(each -> table.addRow(0, head(each)));
      for (int i = 0; i < rows; i++) {
        row(i + 1, grid.rows().get(i));
      }
      fit();
      CellKeys.makeReachable(table, focused);
    }
  }

  /** Shares the width out by what the columns have to hold. */
  private void columns(Grid grid) {
    List<Double> columnsEm = new ArrayList<>();
    columnsEm.add(TextWidth.widestBoldEm(grid.rows().stream().map(Row::depth).toList()));
    double numberEm = TextWidth.boldEm(WIDEST_NUMBER);
    for (String head : grid.columns()) {
      columnsEm.add(Math.max(numberEm, TextWidth.widestBoldEm(List.of(head.split(" ")))));
    }
    widthEm = columnsEm.stream().mapToDouble(em -> em + PADDING_EM).sum();
    table.getColumnConstraints().clear();
    for (double em : columnsEm) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(100 * (em + PADDING_EM) / widthEm);
      table.getColumnConstraints().add(column);
    }
  }

  private void row(int number, Row row) {
    Label depth = head(row.depth());
    depth.getStyleClass().add(Styles.CELL);
    table.addRow(number, depth);
    for (int column = 0; column < row.cells().size(); column++) {
      Button cell = cell(row.cells().get(column));
      cell.setId("cell-" + number + "-" + (column + 1));
      table.addRow(number, cell);
    }
  }

  private static Label head(String words) {
    Label label = Words.label(null, Styles.GRID_HEAD);
    label.setText(words);
    label.setMaxWidth(Double.MAX_VALUE);
    return label;
  }

  private Button cell(Cell cell) {
    Button button = new Button(cell.words());
    button.getStyleClass().setAll(Styles.CELL);
    if (cell.state() == Grid.State.NOW) {
      button.getStyleClass().add(Styles.CELL_NOW);
    }
    button.setMinSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    button.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    button.setAccessibleText(BenchText.GRID_CELL_GO.with(cell.spoken()));
    button.setOnAction(pressed -> goTo.accept(cell.position()));
    return button;
  }

  private void fit() {
    if (rows == 0 || table.getWidth() <= 0) {
      return;
    }
    double byWidth = table.getWidth() / widthEm;
    double byHeight = table.getHeight() / (rows + 1) / ROW_EM;
    double largest = LARGEST_EM * title.getFont().getSize();
    double px = Math.min(largest, Math.min(byWidth, byHeight));
    table.setStyle(String.format(Locale.ROOT, "-fx-font-size: %.1fpx", px));
  }
}
