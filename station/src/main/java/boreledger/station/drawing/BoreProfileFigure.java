package boreledger.station.drawing;

import boreledger.station.results.BoreResults;
import boreledger.station.results.BoreResults.PositionResult;
import boreledger.station.results.CheckResult;
import boreledger.station.results.JobResults;
import boreledger.station.results.JobResults.CylinderResults;
import boreledger.station.wording.LengthFormat;
import boreledger.station.wording.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A bore's diameters against depth on every axis, with uncertainty bands and limits. The bores of a
 * job have the same scale, so that they can be compared.
 *
 * @param curves one for each axis
 * @param marks limits
 * @param spanMm the diameters to be seen
 * @param deepestMm the deepest planned depth
 */
public record BoreProfileFigure(
    List<Curve> curves,
    List<ValueMark> marks,
    double lowMm,
    double highMm,
    double deepestMm,
    LengthFormat lengths)
    implements Figure {
  private static final Map<String, Phrase> LIMITS =
      Map.of(
          "bore-min", Phrase.FIGURE_SMALLEST,
          "bore-max", Phrase.FIGURE_LARGEST,
          "wear-limit", Phrase.FIGURE_WEAR_LIMIT);
  private static final double LEAST_SPAN_MM = 0.02;
  private static final double WIDEST_FOR_LIMITS = 2.6;

  /** Takes copies of the lists. */
  public BoreProfileFigure {
    curves = List.copyOf(curves);
    marks = List.copyOf(marks);
  }

  /**
   * One axis.
   *
   * @param points from the deck down, one for each planned depth
   */
  public record Curve(String axis, List<CurvePoint> points) {
    /** Takes a copy of the list. */
    public Curve {
      points = List.copyOf(points);
    }
  }

  /**
   * One planned depth.
   *
   * @param diameterMm null where it was not read
   * @param expandedUncertaintyMm null where it was not read
   */
  public record CurvePoint(double depthMm, Double diameterMm, Double expandedUncertaintyMm) {
    boolean read() {
      return diameterMm != null;
    }
  }

  /** The profile of one of a job's cylinders. */
  public static BoreProfileFigure of(
      JobResults results, CylinderResults cylinder, LengthFormat lengths) {
    List<ValueMark> marks =
        cylinder.bore().checks().stream()
            .filter(check -> LIMITS.containsKey(check.check()))
            .map(BoreProfileFigure::mark)
            .toList();
    List<Double> edgesMm =
        results.cylinders().stream()
            .flatMap(each -> each.bore().positions().stream())
            .filter(each -> each.diameterMm() != null)
            .flatMap(
                each ->
                    Stream.of(
                        each.diameterMm() - each.expandedUncertaintyMm(),
                        each.diameterMm() + each.expandedUncertaintyMm()))
            .toList();
    Range span =
        Range.of(
                edgesMm,
                marks.stream().map(ValueMark::mm).toList(),
                LEAST_SPAN_MM,
                WIDEST_FOR_LIMITS)
            .widened(0.05);
    double deepestMm =
        cylinder.bore().positions().stream().mapToDouble(PositionResult::depthMm).max().orElse(1);
    return new BoreProfileFigure(
        curves(cylinder.bore()), marks, span.low(), span.high(), deepestMm, lengths);
  }

  private static List<Curve> curves(BoreResults bore) {
    return bore.positions().stream()
        .map(PositionResult::axis)
        .distinct()
        .map(axis -> new Curve(axis, points(bore, axis)))
        .toList();
  }

  private static List<CurvePoint> points(BoreResults bore, String axis) {
    return bore.positions().stream()
        .filter(each -> each.axis().equals(axis))
        .map(
            each -> new CurvePoint(each.depthMm(), each.diameterMm(), each.expandedUncertaintyMm()))
        .toList();
  }

  private static ValueMark mark(CheckResult check) {
    boolean wear = check.check().equals("wear-limit");
    Stroke stroke = new Stroke(Role.LIMIT, wear ? 1.2 : 0.8, wear ? Dash.SOLID : Dash.DASH_DOT);
    return new ValueMark(LIMITS.get(check.check()), check.limitMm(), stroke);
  }

  @Override
  public void draw(Pen pen, Area area, double size) {
    List<String> axes =
        curves.stream().map(curve -> pen.say(Phrase.FIGURE_AXIS, curve.axis())).toList();
    Legend.draw(pen, area, size, axes);
    DepthChart chart =
        new DepthChart(
            pen,
            area.inside(0, Legend.HEIGHT * size, 0, 0),
            size,
            lengths,
            new Range(lowMm, highMm),
            new Range(0, Math.max(1, 1.06 * deepestMm)),
            pen.say(Phrase.FIGURE_DIAMETER),
            marks);
    curves.forEach(curve -> segments(curve).forEach(segment -> band(pen, chart, segment)));
    for (int i = 0; i < curves.size(); i++) {
      curve(pen, chart, curves.get(i), Marker.of(i), size);
    }
  }

  private static void band(Pen pen, DepthChart chart, List<CurvePoint> segment) {
    List<Point> corners = new ArrayList<>();
    segment.forEach(each -> corners.add(edge(chart, each, -1)));
    for (int i = segment.size() - 1; i >= 0; i--) {
      corners.add(edge(chart, segment.get(i), 1));
    }
    if (segment.size() > 1) {
      pen.polygon(corners, Role.BAND);
    }
  }

  private static void curve(Pen pen, DepthChart chart, Curve curve, Marker marker, double size) {
    for (List<CurvePoint> segment : segments(curve)) {
      List<Point> points =
          segment.stream().map(each -> chart.at(each.diameterMm(), each.depthMm())).toList();
      if (points.size() > 1) {
        pen.polyline(points, marker.stroke(0.13 * size));
      } else {
        ErrorBar.draw(
            pen, edge(chart, segment.get(0), -1), edge(chart, segment.get(0), 1), marker, size);
      }
      points.forEach(point -> marker.draw(pen, point, 0.34 * size));
    }
  }

  /** Runs of depths without a missing one between them. */
  private static List<List<CurvePoint>> segments(Curve curve) {
    List<List<CurvePoint>> segments = new ArrayList<>();
    boolean open = false;
    for (CurvePoint point : curve.points()) {
      if (point.read() && !open) {
        segments.add(new ArrayList<>());
      }
      if (point.read()) {
        segments.get(segments.size() - 1).add(point);
      }
      open = point.read();
    }
    return segments;
  }

  private static Point edge(DepthChart chart, CurvePoint point, int side) {
    return chart.at(point.diameterMm() + side * point.expandedUncertaintyMm(), point.depthMm());
  }
}
