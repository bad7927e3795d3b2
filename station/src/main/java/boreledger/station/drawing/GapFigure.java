package boreledger.station.drawing;

import boreledger.station.job.Ring;
import boreledger.station.results.RingResults;
import boreledger.station.results.RingResults.GapResult;
import boreledger.station.results.RingResults.TightestResult;
import boreledger.station.wording.LengthFormat;
import boreledger.station.wording.Phrase;
import java.util.ArrayList;
import java.util.List;

/**
 * A ring's gap along the bore: what was measured and what is expected, the target, the maker's
 * limits, and the tightest point of the travel.
 *
 * @param points from the deck down, one for each planned depth
 * @param tightest null until it can be told
 */
public record GapFigure(
    List<GapPoint> points,
    GapPlace tightest,
    List<ValueMark> marks,
    double deepestMm,
    LengthFormat lengths)
    implements Figure {
  private static final double LEAST_SPAN_MM = 0.05;
  private static final double WIDEST_FOR_LIMITS = 4;

  /** Takes copies of the lists. */
  public GapFigure {
    points = List.copyOf(points);
    marks = List.copyOf(marks);
  }

  /**
   * One depth.
   *
   * @param measuredMm null where it was not read
   * @param expandedUncertaintyMm null where it was not read
   * @param expectedMm null where nothing can be expected
   */
  public record GapPoint(
      double depthMm, Double measuredMm, Double expandedUncertaintyMm, Double expectedMm) {}

  /** A gap at a depth. */
  public record GapPlace(double depthMm, double gapMm) {}

  /**
   * The gap of a ring in one cylinder.
   *
   * @param ring the ring as the job describes it
   */
  public static GapFigure of(RingResults results, Ring ring, LengthFormat lengths) {
    List<ValueMark> marks = new ArrayList<>();
    Stroke limit = new Stroke(Role.LIMIT, 0.8, Dash.DASH_DOT);
    marks.add(new ValueMark(Phrase.FIGURE_SMALLEST, ring.gapMinMm(), limit));
    marks.add(new ValueMark(Phrase.FIGURE_LARGEST, ring.gapMaxMm(), limit));
    if (results.targetMm() != null) {
      marks.add(
          new ValueMark(Phrase.FIGURE_TARGET, results.targetMm(), Stroke.solid(Role.LIMIT, 1.2)));
    }
    TightestResult tightest = results.tightest();
    return new GapFigure(
        results.gaps().stream().map(GapFigure::point).toList(),
        tightest == null ? null : new GapPlace(tightest.depthMm(), tightest.gapMm()),
        marks,
        ring.travelBottomMm(),
        lengths);
  }

  private static GapPoint point(GapResult gap) {
    return new GapPoint(
        gap.depthMm(), gap.measuredMm(), gap.measuredUncertaintyMm(), gap.expectedMm());
  }

  @Override
  public void draw(Pen pen, Area area, double size) {
    List<String> series = List.of(pen.say(Phrase.FIGURE_MEASURED), pen.say(Phrase.FIGURE_EXPECTED));
    Legend.draw(pen, area, size, series);
    DepthChart chart =
        new DepthChart(
            pen,
            area.inside(0, Legend.HEIGHT * size, 0, 0),
            size,
            lengths,
            span(),
            new Range(0, Math.max(1, 1.06 * deepestMm)),
            pen.say(Phrase.FIGURE_GAP),
            marks);
    expected(pen, chart, size);
    measured(pen, chart, size);
    if (tightest != null) {
      tightest(pen, chart, size);
    }
  }

  private Range span() {
    List<Double> valuesMm = new ArrayList<>();
    for (GapPoint point : points) {
      if (point.measuredMm() != null) {
        valuesMm.add(point.measuredMm() - point.expandedUncertaintyMm());
        valuesMm.add(point.measuredMm() + point.expandedUncertaintyMm());
      }
      if (point.expectedMm() != null) {
        valuesMm.add(point.expectedMm());
      }
    }
    if (tightest != null) {
      valuesMm.add(tightest.gapMm());
    }
    List<Double> marksMm = marks.stream().map(ValueMark::mm).toList();
    return Range.of(valuesMm, marksMm, LEAST_SPAN_MM, WIDEST_FOR_LIMITS).widened(0.06);
  }

  private void expected(Pen pen, DepthChart chart, double size) {
    List<Point> line =
        points.stream()
            .filter(each -> each.expectedMm() != null)
            .map(each -> chart.at(each.expectedMm(), each.depthMm()))
            .toList();
    if (line.size() > 1) {
      pen.polyline(line, Marker.SQUARE.stroke(0.13 * size));
    }
    line.forEach(point -> Marker.SQUARE.draw(pen, point, 0.42 * size));
  }

  private void measured(Pen pen, DepthChart chart, double size) {
    for (GapPoint point : points) {
      if (point.measuredMm() != null) {
        double uMm = point.expandedUncertaintyMm();
        ErrorBar.draw(
            pen,
            chart.at(point.measuredMm() - uMm, point.depthMm()),
            chart.at(point.measuredMm() + uMm, point.depthMm()),
            Marker.DISC,
            size);
        Marker.DISC.draw(pen, chart.at(point.measuredMm(), point.depthMm()), 0.3 * size);
      }
    }
  }

  /** A ring about the tightest point and its name on the side with more room. */
  private void tightest(Pen pen, DepthChart chart, double size) {
    Point at = chart.at(tightest.gapMm(), tightest.depthMm());
    pen.circle(at, 0.85 * size, Stroke.solid(Role.ATTENTION, 0.14 * size));
    boolean rightSide = at.x() < chart.plot().centre().x();
    Point words = at.plus((rightSide ? 1.3 : -1.3) * size, 0.36 * size);
    String name = pen.say(Phrase.FIGURE_TIGHTEST);
    double width = pen.width(name, size);
    double left = (rightSide ? Anchor.LEFT : Anchor.RIGHT).left(words.x(), width);
    Area free = new Area(left, words.y() - 0.9 * size, width, 1.2 * size);
    pen.polygon(
        List.of(
            new Point(free.x(), free.y()),
            new Point(free.right(), free.y()),
            new Point(free.right(), free.bottom()),
            new Point(free.x(), free.bottom())),
        Role.GROUND);
    pen.text(name, new Point(left, words.y()), Anchor.LEFT, size, Role.ATTENTION);
  }
}
