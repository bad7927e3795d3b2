package boreledger.station.bench.ledger;

import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.scene.control.IndexedCell;
import javafx.scene.control.TableCell;
import javafx.scene.text.Text;

/** Words in a cell of a list or table that wrap rather than being cut off. */
final class Wrapped {
  private Wrapped() {}

  /**
   * Words as wide as their cell less a part of it.
   *
   * @param takenEm what else stands beside them, in em of the words' font
   */
  static Text words(IndexedCell<?> cell, String words, double takenEm, String... styles) {
    Text text = new Text(words);
    text.getStyleClass().addAll(styles);
    ReadOnlyDoubleProperty width = width(cell);
    text.wrappingWidthProperty()
        .bind(
            Bindings.createDoubleBinding(
                () -> Math.max(0, width.get() - besides(cell) - takenEm * text.getFont().getSize()),
                width,
                cell.insetsProperty(),
                text.fontProperty()));
    return text;
  }

  /**
   * A table's row asks its cells for their height before it gives them their width, so their words
   * go by the column.
   */
  private static ReadOnlyDoubleProperty width(IndexedCell<?> cell) {
    return cell instanceof TableCell<?, ?> inTable
        ? inTable.getTableColumn().widthProperty()
        : cell.widthProperty();
  }

  // A pixel more, since a wrapped line is laid out a fraction wider than asked.
  private static double besides(IndexedCell<?> cell) {
    return cell.getInsets().getLeft() + cell.getInsets().getRight() + 1;
  }
}
