package boreledger.station.drawing;

import java.util.ArrayList;
import java.util.List;

/** The look of one of several series: a marker and a line that tell it from the others. */
enum Marker {
  DISC(Role.FIRST_AXIS, Dash.SOLID) {
    @Override
    void draw(Pen pen, Point at, double radius) {
      pen.disc(at, radius, role());
    }
  },
  SQUARE(Role.SECOND_AXIS, Dash.DASHED) {
    @Override
    void draw(Pen pen, Point at, double radius) {
      double half = 0.9 * radius;
      List<Point> corners =
          List.of(
              at.plus(-half, -half),
              at.plus(half, -half),
              at.plus(half, half),
              at.plus(-half, half));
      hollow(pen, corners, radius);
    }
  },
  TRIANGLE(Role.OTHER_AXIS, Dash.DOTTED) {
    @Override
    void draw(Pen pen, Point at, double radius) {
      hollow(
          pen,
          List.of(
              at.plus(0, -1.2 * radius),
              at.plus(1.1 * radius, 0.8 * radius),
              at.plus(-1.1 * radius, 0.8 * radius)),
          radius);
    }
  },
  DIAMOND(Role.INK, Dash.DASH_DOT) {
    @Override
    void draw(Pen pen, Point at, double radius) {
      double reach = 1.3 * radius;
      hollow(
          pen,
          List.of(at.plus(0, -reach), at.plus(reach, 0), at.plus(0, reach), at.plus(-reach, 0)),
          radius);
    }
  };

  private final Role role;
  private final Dash dash;

  Marker(Role role, Dash dash) {
    this.role = role;
    this.dash = dash;
  }

  /** The marker of a series; with more than four they begin again. */
  static Marker of(int series) {
    return values()[series % values().length];
  }

  Role role() {
    return role;
  }

  /** The line that goes with it. */
  Stroke stroke(double width) {
    return new Stroke(role, width, dash);
  }

  abstract void draw(Pen pen, Point at, double radius);

  void hollow(Pen pen, List<Point> corners, double radius) {
    pen.polygon(corners, Role.GROUND);
    pen.polyline(closed(corners), Stroke.solid(role, 0.4 * radius));
  }

  private static List<Point> closed(List<Point> corners) {
    List<Point> all = new ArrayList<>(corners);
    all.add(corners.get(0));
    all.add(corners.get(1));
    return all;
  }
}
