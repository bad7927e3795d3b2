package boreledger.station.drawing;

/** A rectangle to draw in; {@code x} and {@code y} are its upper left corner. */
public record Area(double x, double y, double width, double height) {
  /** The right edge. */
  public double right() {
    return x + width;
  }

  /** The lower edge. */
  public double bottom() {
    return y + height;
  }

  /** The middle. */
  public Point centre() {
    return new Point(x + width / 2, y + height / 2);
  }

  /** What is left after taking so much off each side. */
  public Area inside(double left, double top, double rightSide, double bottomSide) {
    return new Area(x + left, y + top, width - left - rightSide, height - top - bottomSide);
  }
}
