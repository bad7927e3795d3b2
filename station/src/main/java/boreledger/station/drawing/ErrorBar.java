package boreledger.station.drawing;

/** How far a single value may be off, as a bar with ends. */
final class ErrorBar {
  private ErrorBar() {}

  static void draw(Pen pen, Point from, Point to, Marker marker, double size) {
    Stroke stroke = Stroke.solid(marker.role(), 0.09 * size);
    double half = 0.3 * size;
    pen.line(from, to, stroke);
    pen.line(from.plus(0, -half), from.plus(0, half), stroke);
    pen.line(to.plus(0, -half), to.plus(0, half), stroke);
  }
}
