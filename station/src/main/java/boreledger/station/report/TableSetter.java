package boreledger.station.report;

import boreledger.station.drawing.Anchor;
import boreledger.station.drawing.Point;
import boreledger.station.drawing.Role;
import boreledger.station.drawing.Stroke;
import java.util.ArrayList;
import java.util.List;

/** Sets a table: a head that is repeated on every page, and rows that are not broken. */
final class TableSetter {
  private static final double SIZE = 8.2;
  private static final double LINE = 1.25 * SIZE;
  private static final double PADDING = 2.2;
  private static final double GUTTER = 7;

  private final Typesetter type;
  private final List<Column> columns;
  private final double[] left;

  TableSetter(Typesetter type, List<Column> columns) {
    this.type = type;
    this.columns = List.copyOf(columns);
    double sum = columns.stream().mapToDouble(Column::share).sum();
    this.left = new double[columns.size() + 1];
    for (int i = 0; i < columns.size(); i++) {
      left[i + 1] = left[i] + columns.get(i).share() / sum * (type.width() + GUTTER);
    }
  }

  List<Piece> pieces(List<List<String>> rows) {
    Piece head = row(columns.stream().map(Column::title).toList(), true).keepingNext();
    List<Piece> pieces = new ArrayList<>();
    pieces.add(head);
    for (int i = 0; i < rows.size(); i++) {
      Piece row = row(rows.get(i), false).under(head);
      boolean edge = i == 0 || i == rows.size() - 2;
      pieces.add(edge && i < rows.size() - 1 ? row.keepingNext() : row);
    }
    pieces.add(Piece.of(4, (pen, x, y) -> {}));
    return pieces;
  }

  private Piece row(List<String> cells, boolean head) {
    List<List<String>> wrapped = new ArrayList<>();
    int most = 1;
    for (int i = 0; i < columns.size(); i++) {
      List<String> lines = type.face().wrap(cells.get(i), SIZE, cellWidth(i));
      wrapped.add(lines);
      most = Math.max(most, lines.size());
    }
    double height = most * LINE + 2 * PADDING;
    return Piece.of(
        height,
        (pen, x, y) -> {
          for (int i = 0; i < columns.size(); i++) {
            cell(pen, wrapped.get(i), i, head, x, y + PADDING);
          }
          double width = head ? 0.7 : 0.3;
          pen.line(
              new Point(x, y + height),
              new Point(x + type.width(), y + height),
              Stroke.solid(head ? Role.INK : Role.QUIET, width));
        });
  }

  private double cellWidth(int column) {
    return left[column + 1] - left[column] - GUTTER;
  }

  private void cell(PdfPen pen, List<String> lines, int column, boolean head, double x, double y) {
    Anchor anchor = columns.get(column).anchor();
    double at = x + left[column] + (anchor == Anchor.RIGHT ? cellWidth(column) : 0);
    double baseline = y + 0.95 * SIZE;
    for (String line : lines) {
      if (head) {
        pen.strong(line, new Point(at, baseline), anchor, SIZE);
      } else {
        pen.text(line, new Point(at, baseline), anchor, SIZE, Role.INK);
      }
      baseline += LINE;
    }
  }
}
