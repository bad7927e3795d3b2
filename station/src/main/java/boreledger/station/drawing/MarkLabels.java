package boreledger.station.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Labels above a chart, each over its line, in as many rows as it takes to keep them apart. Row 0
 * stands next to the chart; a label of a higher row has a line down to the chart that crosses no
 * other label.
 */
final class MarkLabels {
  private static final int MOST_ROWS = 8;

  private final double left;
  private final double right;
  private final double gap;
  private final List<Label> labels = new ArrayList<>();

  /**
   * A label in its place.
   *
   * @param x where its line stands
   * @param from its left end
   * @param to its right end
   */
  record Label(String words, double x, double from, double to, int row) {
    private boolean covers(double other, double gap) {
      return other > from - gap && other < to + gap;
    }

    private boolean meets(Label other, double gap) {
      boolean overlap = from < other.to + gap && other.from < to + gap;
      return row == other.row ? overlap : lower(other).covers(upper(other).x, 0);
    }

    private Label lower(Label other) {
      return row < other.row ? this : other;
    }

    private Label upper(Label other) {
      return row < other.row ? other : this;
    }
  }

  /** Room for labels between two edges, with a gap between neighbours. */
  MarkLabels(double left, double right, double gap) {
    this.left = left;
    this.right = right;
    this.gap = gap;
  }

  /** Finds a place for a label over {@code x}. */
  void add(String words, double x, double width) {
    for (int row = 0; row < MOST_ROWS; row++) {
      for (Anchor anchor : new Anchor[] {Anchor.CENTRE, Anchor.LEFT, Anchor.RIGHT}) {
        Label label = at(words, x, width, anchor, row);
        if (labels.stream().noneMatch(each -> each.meets(label, gap))) {
          labels.add(label);
          return;
        }
      }
    }
    labels.add(at(words, x, width, Anchor.CENTRE, rows()));
  }

  List<Label> labels() {
    return List.copyOf(labels);
  }

  int rows() {
    return labels.stream().mapToInt(each -> each.row() + 1).max().orElse(0);
  }

  private Label at(String words, double x, double width, Anchor anchor, int row) {
    double from = Math.max(left, Math.min(anchor.left(x, width), right - width));
    return new Label(words, x, from, from + width, row);
  }
}
