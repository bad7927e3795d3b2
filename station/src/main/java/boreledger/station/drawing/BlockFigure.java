package boreledger.station.drawing;

import boreledger.station.job.Engine.Arrangement;
import boreledger.station.results.JobResults;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.results.RingResults;
import boreledger.station.wording.Phrase;
import java.util.List;

/** The block from above: every cylinder with its number and its state, by word and by outline. */
public record BlockFigure(Arrangement arrangement, List<Cylinder> cylinders) implements Figure {
  /** Takes a copy of the list. */
  public BlockFigure {
    cylinders = List.copyOf(cylinders);
  }

  /**
   * One cylinder.
   *
   * @param look whether a ring of it asks a person to look
   */
  public record Cylinder(int number, BoreState state, boolean look) {
    List<String> words(Pen pen) {
      String bore = pen.say(state.phrase());
      return look ? List.of(bore, pen.say(Phrase.FIGURE_LOOK_AT_RINGS)) : List.of(bore);
    }
  }

  /** The block of a job. */
  public static BlockFigure of(JobResults results, Arrangement arrangement) {
    return new BlockFigure(
        arrangement, results.cylinders().stream().map(BlockFigure::cylinder).toList());
  }

  private static Cylinder cylinder(CylinderResults results) {
    boolean look = results.rings().stream().anyMatch(RingResults::attention);
    return new Cylinder(results.cylinder(), BoreState.of(results.bore()), look);
  }

  /** How many cylinders stand beside each other; two banks are half a cylinder apart. */
  public double columns() {
    return arrangement == Arrangement.INLINE ? cylinders.size() : (cylinders.size() + 1) / 2 + 0.5;
  }

  @Override
  public void draw(Pen pen, Area area, double size) {
    boolean oneRow = arrangement == Arrangement.INLINE;
    Area room = area.inside(0, 0, 0, oneRow ? 0 : 1.5 * size);
    int rows = oneRow ? 1 : 2;
    double pitch = room.width() / columns();
    double fitting = fitting(pen, 0.9 * pitch, size);
    double height = Math.min(room.height() / rows, pitch + 3.4 * size);
    double top = room.y() + (room.height() - rows * height) / 2;
    Area block = new Area(room.x(), top, room.width(), rows * height);
    pen.outline(block, Stroke.solid(Role.QUIET, 0.1 * size));
    if (arrangement == Arrangement.FLAT) {
      Stroke seam = new Stroke(Role.QUIET, 0.1 * size, Dash.DASH_DOT);
      double middle = block.centre().y();
      pen.line(new Point(block.x(), middle), new Point(block.right(), middle), seam);
    }
    for (int i = 0; i < cylinders.size(); i++) {
      double column = oneRow ? i : i / 2 + 0.5 * (i % 2);
      double y = top + (oneRow ? 0 : i % 2) * height;
      Area cell = new Area(room.x() + column * pitch, y, pitch, height);
      cylinder(pen, cell, fitting, cylinders.get(i));
    }
    if (!oneRow) {
      Point at = new Point(area.x(), area.bottom() - 0.3 * size);
      pen.text(pen.say(Phrase.FIGURE_BANKS), at, Anchor.LEFT, size, Role.QUIET);
    }
  }

  /** The same size for the words of every cylinder. */
  private double fitting(Pen pen, double width, double size) {
    double widest =
        cylinders.stream()
            .flatMap(each -> each.words(pen).stream())
            .mapToDouble(each -> pen.width(each, size))
            .max()
            .orElse(0);
    return widest > width ? size * width / widest : size;
  }

  private static void cylinder(Pen pen, Area cell, double size, Cylinder cylinder) {
    Area room = cell.inside(0, 0.4 * size, 0, 3 * size);
    double radius = 0.42 * Math.min(room.width(), room.height());
    Point centre = room.centre();
    outline(pen, centre, radius, size, cylinder.state());
    String number = Integer.toString(cylinder.number());
    double tall = 0.9 * radius;
    pen.text(number, centre.plus(0, 0.36 * tall), Anchor.CENTRE, tall, Role.INK);
    double y = room.bottom() + 1.1 * size;
    for (String words : cylinder.words(pen)) {
      pen.text(words, new Point(centre.x(), y), Anchor.CENTRE, size, Role.INK);
      y += 1.25 * size;
    }
  }

  /** One circle: within. Two: beyond. A broken one inside: undecided. Broken: not known. */
  private static void outline(Pen pen, Point centre, double radius, double size, BoreState state) {
    Role role = state == BoreState.BEYOND ? Role.ATTENTION : Role.INK;
    Dash dash =
        switch (state) {
          case BEYOND, WITHIN, UNDECIDED -> Dash.SOLID;
          case INCOMPLETE, NO_LIMITS -> Dash.DASH_DOT;
          case NOT_GAUGED -> Dash.DOTTED;
        };
    pen.circle(centre, radius, new Stroke(role, 0.16 * size, dash));
    if (state == BoreState.BEYOND || state == BoreState.UNDECIDED) {
      Dash inner = state == BoreState.BEYOND ? Dash.SOLID : Dash.DOTTED;
      pen.circle(centre, 0.84 * radius, new Stroke(role, 0.16 * size, inner));
    }
  }
}
