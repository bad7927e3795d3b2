package boreledger.station.bench.ledger;

import javafx.beans.binding.Bindings;
import javafx.scene.control.IndexedCell;
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
    text.wrappingWidthProperty()
        .bind(
            Bindings.createDoubleBinding(
                () -> Math.max(0, inner(cell) - takenEm * text.getFont().getSize()),
                cell.widthProperty(),
                cell.insetsProperty(),
                text.fontProperty()));
    return text;
  }

  // A pixel less, since a wrapped line is laid out a fraction wider than asked.
  private static double inner(IndexedCell<?> cell) {
    return cell.getWidth() - cell.getInsets().getLeft() - cell.getInsets().getRight() - 1;
  }
}
