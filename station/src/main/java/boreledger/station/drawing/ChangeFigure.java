package boreledger.station.drawing;

import boreledger.station.results.SessionComparison;
import boreledger.station.results.SessionComparison.Change;
import boreledger.station.wording.LengthFormat;
import boreledger.station.wording.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What two sessions read along one bore: before hollow and dashed, after filled and whole, the
 * shape of a marker telling the axis. The bar about a reading after is the uncertainty of its
 * difference from the one before: where it does not reach that one, the difference is beyond it.
 *
 * @param curves one for each axis; a single one for gaps
 * @param what what was measured
 */
public record ChangeFigure(List<Curve> curves, Phrase what, LengthFormat lengths)
    implements Figure {
  private static final double LEAST_SPAN_MM = 0.02;

  /** Takes a copy of the list. */
  public ChangeFigure {
    curves = List.copyOf(curves);
  }

  /**
   * One axis.
   *
   * @param axis null for gaps
   * @param points from the deck down, where both sessions read
   */
  public record Curve(String axis, List<ChangePoint> points) {
    /** Takes a copy of the list. */
    public Curve {
      points = List.copyOf(points);
    }
  }

  /**
   * One depth that both sessions read.
   *
   * @param expandedUncertaintyMm of the difference
   */
  public record ChangePoint(
      double depthMm, double beforeMm, double afterMm, double expandedUncertaintyMm) {
    Stream<Double> edgesMm() {
      return Stream.of(beforeMm, afterMm - expandedUncertaintyMm, afterMm + expandedUncertaintyMm);
    }
  }

  /** What became of one cylinder. */
  public static ChangeFigure of(SessionComparison comparison, int cylinder, LengthFormat lengths) {
    boolean gaps = comparison.changes().stream().anyMatch(each -> each.what().equals("gap"));
    String what = gaps ? "gap" : "diameter";
    List<Change> read =
        comparison.changes().stream()
            .filter(each -> each.cylinder() == cylinder && each.what().equals(what))
            .toList();
    List<Curve> curves = new ArrayList<>();
    for (String axis : read.stream().map(ChangeFigure::axis).distinct().toList()) {
      curves.add(
          new Curve(
              axis.isEmpty() ? null : axis,
              read.stream()
                  .filter(each -> axis(each).equals(axis))
                  .map(
                      each ->
                          new ChangePoint(
                              each.depthMm(),
                              each.beforeMm(),
                              each.afterMm(),
                              each.expandedUncertaintyMm()))
                  .toList()));
    }
    return new ChangeFigure(curves, gaps ? Phrase.FIGURE_GAP : Phrase.FIGURE_DIAMETER, lengths);
  }

  private static String axis(Change change) {
    return change.axis() == null ? "" : change.axis();
  }

  @Override
  public void draw(Pen pen, Area area, double size) {
    double top = legend(pen, area, size);
    List<ChangePoint> points = curves.stream().flatMap(each -> each.points().stream()).toList();
    double deepestMm = points.stream().mapToDouble(ChangePoint::depthMm).max().orElse(1);
    DepthChart chart =
        new DepthChart(
            pen,
            area.inside(0, top, 0, 0),
            size,
            lengths,
            Range.of(points.stream().flatMap(ChangePoint::edgesMm).toList(), LEAST_SPAN_MM)
                .widened(0.05),
            new Range(0, Math.max(1, 1.06 * deepestMm)),
            pen.say(what),
            List.of());
    for (int i = 0; i < curves.size(); i++) {
      before(pen, chart, curves.get(i), Marker.of(i), size);
    }
    for (int i = 0; i < curves.size(); i++) {
      after(pen, chart, curves.get(i), Marker.of(i), size);
    }
  }

  private static void before(Pen pen, DepthChart chart, Curve curve, Marker marker, double size) {
    List<Point> line =
        curve.points().stream().map(each -> chart.at(each.beforeMm(), each.depthMm())).toList();
    if (line.size() > 1) {
      pen.polyline(line, new Stroke(marker.role(), 0.13 * size, Dash.DASHED));
    }
    line.forEach(point -> marker.hollow(pen, point, 0.42 * size));
  }

  private static void after(Pen pen, DepthChart chart, Curve curve, Marker marker, double size) {
    for (ChangePoint each : curve.points()) {
      double uMm = each.expandedUncertaintyMm();
      ErrorBar.draw(
          pen,
          chart.at(each.afterMm() - uMm, each.depthMm()),
          chart.at(each.afterMm() + uMm, each.depthMm()),
          marker,
          size);
    }
    List<Point> line =
        curve.points().stream().map(each -> chart.at(each.afterMm(), each.depthMm())).toList();
    if (line.size() > 1) {
      pen.polyline(line, Stroke.solid(marker.role(), 0.13 * size));
    }
    line.forEach(point -> marker.filled(pen, point, 0.34 * size));
  }

  /** A row for each axis, before and after; answers how much room it took. */
  private double legend(Pen pen, Area area, double size) {
    double widest = 0;
    for (Curve curve : curves) {
      double words =
          Math.max(pen.width(before(pen, curve), size), pen.width(after(pen, curve), size));
      widest = Math.max(widest, words + 4.4 * size);
    }
    double fitting = 2 * widest > area.width() ? size * area.width() / (2 * widest) : size;
    double row = Legend.HEIGHT * size;
    for (int i = 0; i < curves.size(); i++) {
      Marker marker = Marker.of(i);
      Point left = new Point(area.x(), area.y() + 0.55 * size + i * row);
      Point middle = left.plus(widest * fitting / size, 0);
      Stroke broken = new Stroke(marker.role(), 0.13 * fitting, Dash.DASHED);
      pen.line(left, left.plus(2.8 * fitting, 0), broken);
      marker.hollow(pen, left.plus(1.4 * fitting, 0), 0.42 * fitting);
      named(pen, left, before(pen, curves.get(i)), fitting);
      Stroke whole = Stroke.solid(marker.role(), 0.13 * fitting);
      pen.line(middle, middle.plus(2.8 * fitting, 0), whole);
      marker.filled(pen, middle.plus(1.4 * fitting, 0), 0.34 * fitting);
      named(pen, middle, after(pen, curves.get(i)), fitting);
    }
    return row * curves.size();
  }

  private static void named(Pen pen, Point at, String words, double size) {
    pen.text(words, at.plus(3.2 * size, 0.36 * size), Anchor.LEFT, size, Role.INK);
  }

  private static String before(Pen pen, Curve curve) {
    return curve.axis() == null
        ? pen.say(Phrase.FIGURE_BEFORE)
        : pen.say(Phrase.FIGURE_AXIS_BEFORE, curve.axis());
  }

  private static String after(Pen pen, Curve curve) {
    return curve.axis() == null
        ? pen.say(Phrase.FIGURE_AFTER)
        : pen.say(Phrase.FIGURE_AXIS_AFTER, curve.axis());
  }
}
