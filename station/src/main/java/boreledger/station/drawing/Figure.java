package boreledger.station.drawing;

/** Something that can be drawn. Figures are immutable and draw the same every time. */
public interface Figure {
  /**
   * Draws itself into an area, and not beyond it.
   *
   * @param size the height of its words; lines and markers follow it
   */
  void draw(Pen pen, Area area, double size);
}
