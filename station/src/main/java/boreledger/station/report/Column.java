package boreledger.station.report;

import boreledger.station.drawing.Anchor;

/**
 * A column of a table.
 *
 * @param share how wide it is, in parts of the sum of all shares
 */
record Column(String title, double share, Anchor anchor) {
  /** A column of words. */
  static Column words(String title, double share) {
    return new Column(title, share, Anchor.LEFT);
  }

  /** A column of numbers. */
  static Column numbers(String title, double share) {
    return new Column(title, share, Anchor.RIGHT);
  }
}
