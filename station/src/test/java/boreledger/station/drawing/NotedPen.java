package boreledger.station.drawing;

import java.util.ArrayList;
import java.util.List;

/** Notes what was drawn. Every letter of it is six tenths as wide as tall. */
final class NotedPen implements Pen {
  private static final double LETTER = 0.6;

  private final List<Point> points = new ArrayList<>();
  private final List<Words> words = new ArrayList<>();
  private final List<Stroke> strokes = new ArrayList<>();

  /** Words and the room they take. */
  record Words(String words, double left, double right, double top, double bottom) {
    boolean meets(Words other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
  }

  List<Point> points() {
    return points;
  }

  List<Words> words() {
    return words;
  }

  List<Stroke> strokes() {
    return strokes;
  }

  @Override
  public void polyline(List<Point> line, Stroke stroke) {
    points.addAll(line);
    strokes.add(stroke);
  }

  @Override
  public void polygon(List<Point> corners, Role role) {
    points.addAll(corners);
  }

  @Override
  public void arc(Point centre, double radius, double fromDeg, double sweepDeg, Stroke stroke) {
    disc(centre, radius, stroke.role());
    strokes.add(stroke);
  }

  @Override
  public void disc(Point centre, double radius, Role role) {
    points.add(centre.plus(-radius, -radius));
    points.add(centre.plus(radius, radius));
  }

  @Override
  public void text(String text, Point at, Anchor anchor, double size, Role role) {
    double left = anchor.left(at.x(), width(text, size));
    double right = left + width(text, size);
    words.add(new Words(text, left, right, at.y() - 0.72 * size, at.y() + 0.2 * size));
  }

  @Override
  public double width(String text, double size) {
    return LETTER * size * text.codePointCount(0, text.length());
  }
}
