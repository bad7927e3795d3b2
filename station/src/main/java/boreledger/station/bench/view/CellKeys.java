package boreledger.station.bench.view;

import boreledger.station.bench.look.Styles;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;

/**
 * Goes over the cells of a table by arrow keys, and presses them with Enter. Tab reaches one cell
 * only, so that a large table is no detour.
 */
final class CellKeys {
  private final GridPane table;

  CellKeys(GridPane table) {
    this.table = table;
  }

  /** A cell's place in the table. */
  record At(int row, int column) {
    static At of(Node cell) {
      return new At(GridPane.getRowIndex(cell), GridPane.getColumnIndex(cell));
    }
  }

  /** The cell that has the focus; null when none has. */
  static At focused(GridPane table) {
    return table.getChildren().stream()
        .filter(Node::isFocused)
        .findFirst()
        .map(At::of)
        .orElse(null);
  }

  /**
   * Lets Tab reach the cell to gauge now, or else the first one, and gives the focus back.
   *
   * @param focused what {@link #focused} said before the cells were made anew
   */
  static void makeReachable(GridPane table, At focused) {
    cells(table).forEach(cell -> cell.setFocusTraversable(false));
    cells(table)
        .filter(cell -> cell.getStyleClass().contains(Styles.CELL_NOW))
        .findFirst()
        .or(() -> cells(table).findFirst())
        .ifPresent(cell -> cell.setFocusTraversable(true));
    if (focused != null) {
      at(table, focused.row(), focused.column()).ifPresent(Node::requestFocus);
    }
  }

  void pressed(KeyEvent event) {
    At at = focused(table);
    if (at == null) {
      return;
    }
    switch (event.getCode()) {
      case UP -> to(at.row() - 1, at.column());
      case DOWN -> to(at.row() + 1, at.column());
      case LEFT -> to(at.row(), at.column() - 1);
      case RIGHT -> to(at.row(), at.column() + 1);
      case ENTER -> at(table, at.row(), at.column()).ifPresent(Button::fire);
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void to(int row, int column) {
    at(table, row, column).ifPresent(Node::requestFocus);
  }

  private static Optional<Button> at(GridPane table, int row, int column) {
    return cells(table).filter(cell -> At.of(cell).equals(new At(row, column))).findFirst();
  }

  private static Stream<Button> cells(GridPane table) {
    return table.getChildren().stream().filter(Button.class::isInstance).map(Button.class::cast);
  }
}
