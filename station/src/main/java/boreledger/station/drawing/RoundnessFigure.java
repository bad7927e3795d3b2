package boreledger.station.drawing;

import boreledger.station.drawing.RoundSection.Diameter;
import boreledger.station.results.BoreResults;
import boreledger.station.results.BoreResults.OutOfRoundResult;
import boreledger.station.results.BoreResults.PositionResult;
import boreledger.station.results.JobResults;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.wording.LengthFormat;
import boreledger.station.wording.Phrase;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/**
 * A bore's sections, one for each depth, with their deviations from round exaggerated. The scale is
 * written below; it is the same for the whole job.
 *
 * @param exaggeration how many times larger deviations are drawn than diameters
 */
public record RoundnessFigure(
    List<RoundSection> sections, double exaggeration, LengthFormat lengths) implements Figure {
  private static final double DRAWN_SHARE = 0.3;
  private static final double MOST_EXAGGERATION = 5000;
  private static final int STEP_DEG = 4;
  private static final double LEAST_SHARE = 0.8;

  /** Takes a copy of the list. */
  public RoundnessFigure {
    sections = List.copyOf(sections);
  }

  /** The sections of one of a job's cylinders. */
  public static RoundnessFigure of(
      JobResults results, CylinderResults cylinder, LengthFormat lengths) {
    double largest =
        results.cylinders().stream()
            .map(each -> sections(each.bore()))
            .flatMap(Collection::stream)
            .filter(RoundSection::whole)
            .mapToDouble(each -> each.deviationMm() / each.meanMm())
            .max()
            .orElse(0);
    return new RoundnessFigure(sections(cylinder.bore()), exaggeration(largest), lengths);
  }

  /** The roundest factor that draws the largest deviation as a good part of the radius. */
  static double exaggeration(double largestShare) {
    double wanted = Math.min(MOST_EXAGGERATION, DRAWN_SHARE / Math.max(largestShare, 1e-9));
    double power = Math.pow(10, Math.floor(Math.log10(wanted)));
    double digit = wanted / power;
    return power * (digit >= 5 ? 5 : digit >= 2 ? 2 : 1);
  }

  private static List<RoundSection> sections(BoreResults bore) {
    List<RoundSection> sections = new ArrayList<>();
    for (OutOfRoundResult round : bore.outOfRoundMm()) {
      List<PositionResult> here =
          bore.positions().stream().filter(each -> each.depthMm() == round.depthMm()).toList();
      List<String> axes = here.stream().map(PositionResult::axis).toList();
      List<Diameter> diameters = new ArrayList<>();
      for (int i = 0; i < axes.size(); i++) {
        double deg = AxisDirections.deg(axes, i);
        diameters.add(new Diameter(axes.get(i), deg, here.get(i).diameterMm()));
      }
      sections.add(
          new RoundSection(
              round.depthMm(), diameters, round.valueMm(), round.expandedUncertaintyMm()));
    }
    return sections;
  }

  @Override
  public void draw(Pen pen, Area area, double size) {
    List<String> notes =
        List.of(
            pen.say(Phrase.FIGURE_EXAGGERATED, String.format(Locale.ROOT, "%.0f", exaggeration)),
            pen.say(Phrase.FIGURE_CRANKSHAFT));
    double notesHeight = 1.3 * size * notes.size() + 0.3 * size;
    Area grid = area.inside(0, 0, 0, notesHeight);
    int columns = columns(grid, size);
    int rows = (sections.size() + columns - 1) / columns;
    double width = grid.width() / columns;
    double height = Math.min(grid.height() / Math.max(1, rows), width + 2.6 * size);
    double top = grid.y() + (grid.height() - rows * height) / 2;
    for (int i = 0; i < sections.size(); i++) {
      double x = grid.x() + i % columns * width;
      double y = top + i / columns * height;
      section(pen, new Area(x, y, width, height), size, sections.get(i));
    }
    double y = area.bottom() - notesHeight + 1.2 * size;
    for (String note : notes) {
      pen.text(note, new Point(area.x(), y), Anchor.LEFT, size, Role.QUIET);
      y += 1.3 * size;
    }
  }

  /** As many columns as make the circles largest. */
  private int columns(Area grid, double size) {
    int best = 1;
    double bestRadius = 0;
    for (int columns = 1; columns <= sections.size(); columns++) {
      int rows = (sections.size() + columns - 1) / columns;
      double radius = Math.min(grid.width() / columns, grid.height() / rows - 2.6 * size);
      if (radius > bestRadius) {
        best = columns;
        bestRadius = radius;
      }
    }
    return best;
  }

  private void section(Pen pen, Area cell, double size, RoundSection section) {
    Area room = cell.inside(0, 0, 0, 2.6 * size);
    double radius = Math.max(2, 0.36 * Math.min(room.width(), room.height()));
    Point centre = room.centre();
    pen.circle(centre, radius, new Stroke(Role.QUIET, 0.07 * size, Dash.DASHED));
    if (section.whole()) {
      pen.polyline(outline(centre, radius, section), Stroke.solid(Role.INK, 0.12 * size));
      for (int i = 0; i < section.diametersMm().size(); i++) {
        axis(pen, centre, radius, section, i, size);
      }
    }
    String where =
        pen.say(Phrase.FIGURE_DEEP, lengths.depth(section.depthMm()) + " " + lengths.symbol());
    Point at = new Point(centre.x(), room.bottom() + 0.9 * size);
    pen.text(where, at, Anchor.CENTRE, fitting(pen, where, cell.width(), size), Role.INK);
    String value = value(pen, section, cell.width(), size);
    double smaller = fitting(pen, value, cell.width(), size);
    pen.text(value, at.plus(0, 1.2 * size), Anchor.CENTRE, smaller, Role.INK);
  }

  private void axis(
      Pen pen, Point centre, double radius, RoundSection section, int index, double size) {
    double deg = section.diametersMm().get(index).deg();
    Marker marker = Marker.of(index);
    Point one = place(centre, radius, section, deg);
    Point other = place(centre, radius, section, deg + 180);
    pen.line(one, other, marker.stroke(0.08 * size));
    double markerRadius = Math.min(0.3 * size, 0.14 * radius);
    marker.draw(pen, one, markerRadius);
    marker.draw(pen, other, markerRadius);
  }

  private List<Point> outline(Point centre, double radius, RoundSection section) {
    List<Point> points = new ArrayList<>();
    for (int deg = 0; deg <= 360; deg += STEP_DEG) {
      points.add(place(centre, radius, section, deg));
    }
    return points;
  }

  private Point place(Point centre, double radius, RoundSection section, double deg) {
    double share = exaggeration * section.deviationMm(deg) / section.meanMm();
    double reach = radius * (1 + share);
    double rad = Math.toRadians(deg);
    return centre.plus(reach * Math.cos(rad), -reach * Math.sin(rad));
  }

  /** Without its uncertainty where there is no room to read it. */
  private String value(Pen pen, RoundSection section, double width, double size) {
    if (section.outOfRoundMm() == null) {
      return pen.say(Phrase.FIGURE_NOT_ALL_AXES);
    }
    Double uncertaintyMm = section.expandedUncertaintyMm();
    String whole = lengths.number(section.outOfRoundMm(), uncertaintyMm);
    return fitting(pen, whole, width, size) > LEAST_SHARE * size
        ? whole
        : lengths.number(section.outOfRoundMm(), lengths.decimals(uncertaintyMm));
  }

  private static double fitting(Pen pen, String words, double width, double size) {
    return size * Math.min(1, 0.96 * width / pen.width(words, size));
  }
}
