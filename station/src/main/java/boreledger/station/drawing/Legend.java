package boreledger.station.drawing;

import java.util.List;

/** Which marker and line is what, in one row. */
final class Legend {
  /** Its height in times of the size of its words. */
  static final double HEIGHT = 1.7;

  private Legend() {}

  /** Draws it along the top of an area, smaller when the words need it. */
  static void draw(Pen pen, Area area, double size, List<String> series) {
    double wide = 0;
    for (String words : series) {
      wide += pen.width(words, size) + 4.4 * size;
    }
    double fitting = wide > area.width() ? size * area.width() / wide : size;
    double x = area.x();
    for (int i = 0; i < series.size(); i++) {
      Marker marker = Marker.of(i);
      double y = area.y() + 0.55 * size;
      Point from = new Point(x, y);
      Point to = new Point(x + 2.8 * fitting, y);
      pen.line(from, to, marker.stroke(0.13 * fitting));
      marker.draw(pen, new Point(x + 1.4 * fitting, y), 0.34 * fitting);
      Point words = new Point(x + 3.2 * fitting, y + 0.36 * fitting);
      pen.text(series.get(i), words, Anchor.LEFT, fitting, Role.INK);
      x += pen.width(series.get(i), fitting) + 4.4 * fitting;
    }
  }
}
