package boreledger.station.drawing;

import boreledger.station.wording.Phrase;
import boreledger.station.wording.Vocabulary;
import java.util.List;

/**
 * What figures are drawn with: a canvas on the screen, a page in a file.
 *
 * <p>Coordinates run from the upper left corner, y downward; sizes have the same unit. Angles are
 * degrees from the right, counterclockwise as seen.
 */
public interface Pen {
  /** Draws lines from point to point. */
  void polyline(List<Point> points, Stroke stroke);

  /** Fills a polygon. */
  void polygon(List<Point> corners, Role role);

  /** Draws a part of a circle. */
  void arc(Point centre, double radius, double fromDeg, double sweepDeg, Stroke stroke);

  /** Fills a circle. */
  void disc(Point centre, double radius, Role role);

  /**
   * Writes words on one line.
   *
   * @param at a point on the baseline
   * @param size the height of the font
   */
  void text(String words, Point at, Anchor anchor, double size, Role role);

  /** How wide {@link #text} would write words. */
  double width(String words, double size);

  /** Says a phrase in the language of what is drawn on; English on paper. */
  default String say(Phrase phrase, String... parts) {
    return Vocabulary.ENGLISH.say(phrase, parts);
  }

  /** Draws one line. */
  default void line(Point from, Point to, Stroke stroke) {
    polyline(List.of(from, to), stroke);
  }

  /** Draws a whole circle. */
  default void circle(Point centre, double radius, Stroke stroke) {
    arc(centre, radius, 0, 360, stroke);
  }

  /** Draws the outline of a rectangle. */
  default void outline(Area area, Stroke stroke) {
    polyline(
        List.of(
            new Point(area.x(), area.y()),
            new Point(area.right(), area.y()),
            new Point(area.right(), area.bottom()),
            new Point(area.x(), area.bottom()),
            new Point(area.x(), area.y())),
        stroke);
  }
}
