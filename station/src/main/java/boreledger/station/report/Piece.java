package boreledger.station.report;

import java.util.List;

/**
 * A strip across the page that is not broken.
 *
 * @param height in points
 * @param keepsNext whether it may not be the last on its page, such as a heading
 * @param head what is repeated above it when it is the first on a page; null for nothing
 * @param drawing what stands in it; null for free space, which is dropped at the top of a page
 */
record Piece(double height, boolean keepsNext, Piece head, Drawing drawing) {
  /** Draws into a strip. */
  @FunctionalInterface
  interface Drawing {
    /** Draws with the strip's upper left corner at a place. */
    void draw(PdfPen pen, double x, double y);
  }

  /** Free space. */
  static Piece space(double height) {
    return new Piece(height, true, null, null);
  }

  static Piece of(double height, Drawing drawing) {
    return new Piece(height, false, null, drawing);
  }

  boolean isSpace() {
    return drawing == null;
  }

  /** The same piece, kept on one page with the next. */
  Piece keepingNext() {
    return new Piece(height, true, head, drawing);
  }

  /** The same piece under a head. */
  Piece under(Piece newHead) {
    return new Piece(height, keepsNext, newHead, drawing);
  }

  static double height(List<Piece> pieces) {
    return pieces.stream().mapToDouble(Piece::height).sum();
  }

  /** Pieces above each other as one. */
  static Piece stacked(List<Piece> pieces) {
    return of(
        height(pieces),
        (pen, x, y) -> {
          double top = y;
          for (Piece piece : pieces) {
            if (!piece.isSpace()) {
              piece.drawing().draw(pen, x, top);
            }
            top += piece.height();
          }
        });
  }

  static List<Piece> join(List<List<Piece>> parts) {
    return parts.stream().flatMap(List::stream).toList();
  }
}
