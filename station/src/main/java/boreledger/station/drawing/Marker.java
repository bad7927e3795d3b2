package boreledger.station.drawing;

import java.util.ArrayList;
import java.util.List;

/** The look of one of several series: a marker and a line that tell it from the others. */
enum Marker {
  DISC(Role.FIRST_AXIS, Dash.SOLID) {
    @Override
    void draw(Pen pen, Point at, double radius) {
      filled(pen, at, radius);
    }

    @Override
    void filled(Pen pen, Point at, double radius) {
      pen.disc(at, radius, role());
    }

    @Override
    void hollow(Pen pen, Point at, double radius) {
      pen.disc(at, radius, Role.GROUND);
      pen.circle(at, radius, Stroke.solid(role(), 0.4 * radius));
    }

    @Override
    List<Point> corners(Point at, double radius) {
      return List.of();
    }
  },
  SQUARE(Role.SECOND_AXIS, Dash.DASHED) {
    @Override
    List<Point> corners(Point at, double radius) {
      double half = 0.9 * radius;
      return List.of(
          at.plus(-half, -half), at.plus(half, -half), at.plus(half, half), at.plus(-half, half));
    }
  },
  TRIANGLE(Role.OTHER_AXIS, Dash.DOTTED) {
    @Override
    List<Point> corners(Point at, double radius) {
      return List.of(
          at.plus(0, -1.2 * radius),
          at.plus(1.1 * radius, 0.8 * radius),
          at.plus(-1.1 * radius, 0.8 * radius));
    }
  },
  DIAMOND(Role.INK, Dash.DASH_DOT) {
    @Override
    List<Point> corners(Point at, double radius) {
      double reach = 1.3 * radius;
      return List.of(at.plus(0, -reach), at.plus(reach, 0), at.plus(0, reach), at.plus(-reach, 0));
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

  /** Draws it the way that tells series apart. */
  void draw(Pen pen, Point at, double radius) {
    hollow(pen, at, radius);
  }

  /** Draws it full. */
  void filled(Pen pen, Point at, double radius) {
    pen.polygon(corners(at, radius), role);
  }

  /** Draws its outline. */
  void hollow(Pen pen, Point at, double radius) {
    pen.polygon(corners(at, radius), Role.GROUND);
    pen.polyline(closed(corners(at, radius)), Stroke.solid(role, 0.4 * radius));
  }

  abstract List<Point> corners(Point at, double radius);

  private static List<Point> closed(List<Point> corners) {
    List<Point> all = new ArrayList<>(corners);
    all.add(corners.get(0));
    all.add(corners.get(1));
    return all;
  }
}
