package boreledger.station.drawing;

/** A place on the drawing surface, from the upper left corner, y downward. */
public record Point(double x, double y) {
  /** The place so much further right and down. */
  public Point plus(double dx, double dy) {
    return new Point(x + dx, y + dy);
  }
}
