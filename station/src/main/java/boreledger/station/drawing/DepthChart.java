package boreledger.station.drawing;

import boreledger.station.drawing.MarkLabels.Label;
import boreledger.station.drawing.MarkLabels.Wanted;
import boreledger.station.wording.LengthFormat;
import boreledger.station.wording.Phrase;
import java.util.ArrayList;
import java.util.List;

/**
 * A chart of lengths over depth, the deck on top: its frame, ticks and labelled marks. Everything
 * else is drawn into it by depth and length in millimetres.
 */
final class DepthChart {
  private final Pen pen;
  private final double size;
  private final LengthFormat lengths;
  private final Range values;
  private final Range depths;
  private final Area plot;

  /**
   * Draws the frame.
   *
   * @param spanMm the lengths to be seen, in millimetres
   * @param depthsMm the depths to be seen, in millimetres
   * @param title what the lengths are
   */
  DepthChart(
      Pen pen,
      Area area,
      double size,
      LengthFormat lengths,
      Range spanMm,
      Range depthsMm,
      String title,
      List<ValueMark> marks) {
    this.pen = pen;
    this.size = size;
    this.lengths = lengths;
    this.values = shown(spanMm);
    this.depths = shown(depthsMm);
    Ticks down = Ticks.of(depths, Math.max(2, (int) (area.height() / (3.2 * size))));
    double left = 2.6 * size + widest(down.labels());
    Area inner = area.inside(left, 0, 0.6 * size, 3.1 * size);
    List<Label> labels = place(marks, area, inner);
    int rows = labels.stream().mapToInt(label -> label.row() + 1).max().orElse(0);
    this.plot = inner.inside(0, 1.35 * size * rows + 0.5 * size, 0, 0);
    down(down, area);
    across(area, title);
    marks.forEach(this::mark);
    labels.forEach(this::label);
  }

  /** Where a length at a depth stands. */
  Point at(double mm, double depthMm) {
    return new Point(x(lengths.shown(mm)), y(lengths.shown(depthMm)));
  }

  /** The inside of the frame. */
  Area plot() {
    return plot;
  }

  private double x(double value) {
    return plot.x() + plot.width() * values.share(value);
  }

  private double y(double depth) {
    return plot.y() + plot.height() * depths.share(depth);
  }

  private Range shown(Range mm) {
    return new Range(lengths.shown(mm.low()), lengths.shown(mm.high()));
  }

  private double widest(List<String> labels) {
    return labels.stream().mapToDouble(each -> pen.width(each, size)).max().orElse(0);
  }

  private List<Label> place(List<ValueMark> marks, Area area, Area inner) {
    List<Wanted> wanted = new ArrayList<>();
    for (ValueMark mark : marks) {
      double value = lengths.shown(mark.mm());
      double share = values.share(value);
      if (share < 0) {
        wanted.add(wanted("\u2190 " + words(mark), area.x(), false));
      } else if (share > 1) {
        wanted.add(wanted(words(mark) + " \u2192", area.right(), false));
      } else {
        wanted.add(wanted(words(mark), inner.x() + inner.width() * share, true));
      }
    }
    return new MarkLabels(area.x(), area.right(), 0.8 * size).place(wanted);
  }

  private Wanted wanted(String words, double x, boolean leads) {
    return new Wanted(words, x, pen.width(words, size), leads);
  }

  private String words(ValueMark mark) {
    return pen.say(mark.what()) + " " + lengths.stated(mark.mm());
  }

  private void down(Ticks ticks, Area area) {
    for (int i = 0; i < ticks.values().size(); i++) {
      double y = y(ticks.values().get(i));
      pen.line(new Point(plot.x(), y), new Point(plot.right(), y), grid());
      Point label = new Point(plot.x() - 0.5 * size, y + 0.36 * size);
      pen.text(ticks.labels().get(i), label, Anchor.RIGHT, size, Role.INK);
    }
    Point title = new Point(area.x(), area.bottom() - 0.3 * size);
    String words = pen.say(Phrase.FIGURE_DEPTH) + ", " + lengths.symbol();
    pen.text(words, title, Anchor.LEFT, size, Role.QUIET);
  }

  private void across(Area area, String title) {
    int most = 9;
    Ticks ticks = Ticks.of(values, most);
    while (most > 2 && crowded(ticks)) {
      most--;
      ticks = Ticks.of(values, most);
    }
    for (int i = 0; i < ticks.values().size(); i++) {
      double x = x(ticks.values().get(i));
      pen.line(new Point(x, plot.y()), new Point(x, plot.bottom()), grid());
      label(ticks.labels().get(i), x, area);
    }
    pen.outline(plot, Stroke.solid(Role.INK, 0.07 * size));
    double deck = Math.max(plot.y(), y(0));
    pen.line(
        new Point(plot.x(), deck),
        new Point(plot.right(), deck),
        Stroke.solid(Role.INK, 0.2 * size));
    Point at = new Point(plot.right(), area.bottom() - 0.3 * size);
    pen.text(title + ", " + lengths.symbol(), at, Anchor.RIGHT, size, Role.QUIET);
  }

  private boolean crowded(Ticks ticks) {
    return ticks.values().size() * (widest(ticks.labels()) + 1.2 * size) > plot.width();
  }

  private void label(String words, double x, Area area) {
    double width = pen.width(words, size);
    double left = Math.max(area.x(), Math.min(x - width / 2, area.right() - width));
    Point at = new Point(left, plot.bottom() + 1.2 * size);
    pen.text(words, at, Anchor.LEFT, size, Role.INK);
  }

  private void mark(ValueMark mark) {
    double value = lengths.shown(mark.mm());
    if (values.has(value)) {
      pen.line(new Point(x(value), plot.y()), new Point(x(value), plot.bottom()), mark.stroke());
    }
  }

  private void label(Label label) {
    double baseline = plot.y() - 0.75 * size - 1.35 * size * label.row();
    Point at = new Point(label.from(), baseline);
    pen.text(label.wanted().words(), at, Anchor.LEFT, size, Role.LIMIT);
    if (label.wanted().leads()) {
      pen.line(
          new Point(label.wanted().x(), baseline + 0.25 * size),
          new Point(label.wanted().x(), plot.y()),
          Stroke.solid(Role.LIMIT, 0.05 * size));
    }
  }

  private Stroke grid() {
    return new Stroke(Role.QUIET, 0.04 * size, Dash.DOTTED);
  }
}
