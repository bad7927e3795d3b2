package boreledger.station.report;

import boreledger.station.drawing.Anchor;
import boreledger.station.drawing.Area;
import boreledger.station.drawing.Figure;
import boreledger.station.drawing.Point;
import boreledger.station.drawing.Role;
import boreledger.station.drawing.Stroke;
import java.util.ArrayList;
import java.util.List;

/** Makes pieces of words, tables and figures in a width. Sizes are points. */
final class Typesetter {
  static final double TEXT = 8.5;
  static final double SMALL = 7.2;

  private static final double TITLE = 19;
  private static final double HEADING = 12.5;
  private static final double SUBHEADING = 9.5;
  private static final double LINE = 1.3;
  private static final double BASELINE = 0.98;
  private static final String CAUTION = "Caution: ";
  private static final double CAUTION_INDENT = 9;

  private final Face face;
  private final double width;

  Typesetter(Face face, double width) {
    this.face = face;
    this.width = width;
  }

  double width() {
    return width;
  }

  Face face() {
    return face;
  }

  /** The same in a narrower column. */
  Typesetter within(double newWidth) {
    return new Typesetter(face, newWidth);
  }

  List<Piece> title(String words) {
    return strong(words, TITLE);
  }

  /** A heading, with space above and a rule below; kept with what follows. */
  List<Piece> heading(String words) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(Piece.space(12));
    pieces.addAll(strong(words, HEADING));
    pieces.add(rule());
    return pieces.stream().map(Piece::keepingNext).toList();
  }

  /** A lesser heading; kept with what follows. */
  List<Piece> subheading(String words) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(Piece.space(7));
    pieces.addAll(strong(words, SUBHEADING));
    pieces.add(Piece.space(1.5));
    return pieces.stream().map(Piece::keepingNext).toList();
  }

  List<Piece> paragraph(String words) {
    return lines(words, TEXT, Role.INK);
  }

  List<Piece> small(String words) {
    return lines(words, SMALL, Role.QUIET);
  }

  /** Words that a person should heed, marked by a bar and by the word before them. */
  List<Piece> caution(String words) {
    List<String> lines = face.wrap(CAUTION + words, TEXT, width - CAUTION_INDENT);
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      boolean first = i == 0;
      String line = lines.get(i);
      pieces.add(
          Piece.of(
              LINE * TEXT,
              (pen, x, y) -> {
                pen.line(
                    new Point(x + 2, y),
                    new Point(x + 2, y + LINE * TEXT),
                    Stroke.solid(Role.ATTENTION, 2));
                cautionLine(pen, line, first, new Point(x + CAUTION_INDENT, y + BASELINE * TEXT));
              }));
    }
    List<Piece> kept = unbroken(pieces);
    return Piece.join(List.of(kept, List.of(Piece.of(3, (pen, x, y) -> {}))));
  }

  /** Names and what they stand for, one below the other; blank ones are left out. */
  List<Piece> facts(double nameShare, List<Fact> facts) {
    List<Piece> pieces = new ArrayList<>();
    double left = nameShare * width;
    for (Fact fact : facts) {
      List<Piece> name = within(left - 6).lines(fact.name(), TEXT, Role.QUIET);
      List<Piece> words = within(width - left).lines(fact.words(), TEXT, Role.INK);
      pieces.add(side(Piece.stacked(name), left, Piece.stacked(words)));
    }
    return pieces;
  }

  /** A name and what it stands for. */
  record Fact(String name, String words) {}

  List<Piece> table(List<Column> columns, List<List<String>> rows) {
    return new TableSetter(this, columns).pieces(rows);
  }

  /** A figure as wide as the column. */
  Piece figure(Figure figure, double height, double size) {
    return Piece.of(height, (pen, x, y) -> figure.draw(pen, new Area(x, y, width, height), size));
  }

  /** Two pieces beside each other. */
  Piece side(Piece left, double rightAt, Piece right) {
    return Piece.of(
        Math.max(left.height(), right.height()),
        (pen, x, y) -> {
          left.drawing().draw(pen, x, y);
          right.drawing().draw(pen, x + rightAt, y);
        });
  }

  private void cautionLine(PdfPen pen, String line, boolean first, Point at) {
    if (first && line.startsWith(CAUTION.strip())) {
      pen.strong(CAUTION.strip(), at, Anchor.LEFT, TEXT);
      String rest = line.substring(CAUTION.strip().length()).strip();
      Point behind = at.plus(face.width(CAUTION, TEXT), 0);
      pen.text(rest, behind, Anchor.LEFT, TEXT, Role.INK);
    } else {
      pen.text(line, at, Anchor.LEFT, TEXT, Role.INK);
    }
  }

  private List<Piece> lines(String words, double size, Role role) {
    return unbroken(
        face.wrap(words, size, width).stream()
            .map(
                line ->
                    Piece.of(
                        LINE * size,
                        (pen, x, y) ->
                            pen.text(
                                line, new Point(x, y + BASELINE * size), Anchor.LEFT, size, role)))
            .toList());
  }

  private List<Piece> strong(String words, double size) {
    return face.wrap(words, size, width).stream()
        .map(
            line ->
                Piece.of(
                    LINE * size,
                    (pen, x, y) ->
                        pen.strong(line, new Point(x, y + BASELINE * size), Anchor.LEFT, size)))
        .toList();
  }

  private Piece rule() {
    return Piece.of(
        5,
        (pen, x, y) ->
            pen.line(
                new Point(x, y + 1.5), new Point(x + width, y + 1.5), Stroke.solid(Role.INK, 0.8)));
  }

  /** Neither the first nor the last line of a paragraph stands alone on a page. */
  private static List<Piece> unbroken(List<Piece> lines) {
    List<Piece> kept = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      boolean edge = i == 0 || i == lines.size() - 2;
      kept.add(edge && i < lines.size() - 1 ? lines.get(i).keepingNext() : lines.get(i));
    }
    return kept;
  }
}
