package boreledger.station.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds places for labels above a chart, in as few rows as keep them apart. Row 0 stands next to
 * the chart. A label over a line of the chart has a lead down to it, which crosses no other label;
 * one of something beyond the chart has none and stands at the edge.
 *
 * @param gap what stays free between neighbours of a row
 */
record MarkLabels(double left, double right, double gap) {
  /** A label to be placed over {@code x}. */
  record Wanted(String words, double x, double width, boolean leads) {}

  /**
   * A label in its place.
   *
   * @param from its left end
   */
  record Label(Wanted wanted, double from, int row) {
    double to() {
      return from + wanted.width();
    }

    private boolean meets(Label other, double gap) {
      if (row == other.row) {
        return from < other.to() + gap && other.from < to() + gap;
      }
      Label upper = row > other.row ? this : other;
      Label lower = row > other.row ? other : this;
      double x = upper.wanted.x();
      return upper.wanted.leads() && x > lower.from && x < lower.to();
    }
  }

  /** A place for each; where leads cannot but cross labels, each has a row of its own. */
  List<Label> place(List<Wanted> wanted) {
    for (int rows = 1; rows <= wanted.size(); rows++) {
      List<Label> labels = new ArrayList<>();
      if (place(wanted, rows, labels)) {
        return List.copyOf(labels);
      }
    }
    List<Label> stacked = new ArrayList<>();
    for (Wanted each : wanted) {
      stacked.add(at(each, Anchor.CENTRE, stacked.size()));
    }
    return List.copyOf(stacked);
  }

  /** Tries every row and side for the next label, and takes it back when a later one fails. */
  private boolean place(List<Wanted> wanted, int rows, List<Label> labels) {
    if (labels.size() == wanted.size()) {
      return true;
    }
    Wanted next = wanted.get(labels.size());
    for (int row = 0; row < rows; row++) {
      for (Anchor anchor : new Anchor[] {Anchor.CENTRE, Anchor.LEFT, Anchor.RIGHT}) {
        Label label = at(next, anchor, row);
        if (labels.stream().noneMatch(each -> each.meets(label, gap))) {
          labels.add(label);
          if (place(wanted, rows, labels)) {
            return true;
          }
          labels.remove(labels.size() - 1);
        }
      }
    }
    return false;
  }

  private Label at(Wanted wanted, Anchor anchor, int row) {
    double from = anchor.left(wanted.x(), wanted.width());
    return new Label(wanted, Math.max(left, Math.min(from, right - wanted.width())), row);
  }
}
