package boreledger.station.bench.model;

import boreledger.station.plan.Position;
import java.util.List;

/**
 * One cylinder's positions as a table, filling up.
 *
 * @param title whose they are
 * @param columns axes, clock positions, or the one column of gaps
 * @param rows from the deck down
 */
public record Grid(String title, List<String> columns, List<Row> rows) {
  /** How far a position is. */
  public enum State {
    /** Still to come. */
    OPEN,
    /** To be gauged now. */
    NOW,
    /** Has its reading. */
    TAKEN
  }

  /** One depth. */
  public record Row(String depth, List<Cell> cells) {
    /** Takes a copy of the list. */
    public Row {
      cells = List.copyOf(cells);
    }
  }

  /**
   * One position.
   *
   * @param position where it is
   * @param words the number, or a word where there is none
   * @param spoken the cell with its place, for screen readers
   */
  public record Cell(Position position, State state, String words, String spoken) {}

  /** Takes copies of the lists. */
  public Grid {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  static Grid none() {
    return new Grid("", List.of(), List.of());
  }
}
