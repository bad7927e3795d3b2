package boreledger.calc.match;

import java.math.BigInteger;
import java.util.Arrays;

/**
 * The linear assignment problem by shortest augmenting paths (the Hungarian method as by Jonker and
 * Volgenant, Computing 38, 1987), in exact whole numbers.
 *
 * <p>Each row gets a column of its own so that the sum of costs is smallest. Potentials keep every
 * reduced cost at zero or above; a row is added at a time along the path of least reduced cost.
 */
final class LeastCost {
  private static final int NONE = -1;

  private final BigInteger[][] costs;
  private final BigInteger[] rowPotential;
  private final BigInteger[] columnPotential;
  private final int[] rowOf;

  private LeastCost(BigInteger[][] costs) {
    this.costs = costs;
    rowPotential = zeros(costs.length);
    columnPotential = zeros(costs[0].length);
    rowOf = new int[costs[0].length];
    Arrays.fill(rowOf, NONE);
  }

  /**
   * The column of each row.
   *
   * @param costs one row or more, not more rows than columns; null for a pair that may not be
   * @throws IllegalArgumentException when not every row can have a column
   */
  static int[] columns(BigInteger[][] costs) {
    LeastCost problem = new LeastCost(costs);
    for (int row = 0; row < costs.length; row++) {
      problem.add(row);
    }
    int[] columnOf = new int[costs.length];
    for (int column = 0; column < problem.rowOf.length; column++) {
      if (problem.rowOf[column] != NONE) {
        columnOf[problem.rowOf[column]] = column;
      }
    }
    return columnOf;
  }

  private void add(int newRow) {
    Paths paths = new Paths(rowOf.length);
    int row = newRow;
    BigInteger soFar = BigInteger.ZERO;
    while (true) {
      paths.extend(row, soFar);
      int column = paths.settleNearest();
      soFar = paths.length[column];
      if (rowOf[column] == NONE) {
        paths.movePotentials(newRow, soFar);
        paths.flip(newRow, column);
        return;
      }
      row = rowOf[column];
    }
  }

  private static BigInteger[] zeros(int count) {
    BigInteger[] zeros = new BigInteger[count];
    Arrays.fill(zeros, BigInteger.ZERO);
    return zeros;
  }

  /** The shortest paths from a new row to the columns; a null length is not reached yet. */
  private final class Paths {
    private final BigInteger[] length;
    private final int[] lastRow;
    private final boolean[] settled;

    private Paths(int columns) {
      length = new BigInteger[columns];
      lastRow = new int[columns];
      settled = new boolean[columns];
    }

    private void extend(int row, BigInteger soFar) {
      BigInteger offset = soFar.subtract(rowPotential[row]);
      for (int column = 0; column < length.length; column++) {
        BigInteger cost = costs[row][column];
        if (cost == null || settled[column]) {
          continue;
        }
        BigInteger here = offset.add(cost).subtract(columnPotential[column]);
        if (length[column] == null || here.compareTo(length[column]) < 0) {
          length[column] = here;
          lastRow[column] = row;
        }
      }
    }

    private int settleNearest() {
      int nearest = NONE;
      for (int column = 0; column < length.length; column++) {
        if (!settled[column]
            && length[column] != null
            && (nearest == NONE || length[column].compareTo(length[nearest]) < 0)) {
          nearest = column;
        }
      }
      if (nearest == NONE) {
        throw new IllegalArgumentException("not every row can have a column of its own");
      }
      settled[nearest] = true;
      return nearest;
    }

    private void movePotentials(int newRow, BigInteger whole) {
      rowPotential[newRow] = rowPotential[newRow].add(whole);
      for (int column = 0; column < length.length; column++) {
        if (settled[column] && rowOf[column] != NONE) {
          BigInteger spare = whole.subtract(length[column]);
          rowPotential[rowOf[column]] = rowPotential[rowOf[column]].add(spare);
          columnPotential[column] = columnPotential[column].subtract(spare);
        }
      }
    }

    private void flip(int newRow, int lastColumn) {
      int column = lastColumn;
      while (column != NONE) {
        int row = lastRow[column];
        int before = row == newRow ? NONE : columnOf(row);
        rowOf[column] = row;
        column = before;
      }
    }

    private int columnOf(int row) {
      for (int column = 0; column < rowOf.length; column++) {
        if (rowOf[column] == row) {
          return column;
        }
      }
      throw new IllegalStateException("row " + row + " is on a path but has no column");
    }
  }
}
