package boreledger.station.drawing;

/**
 * What something drawn stands for. A pen chooses its colour; none means anything by colour alone.
 */
public enum Role {
  /** Words and outlines. */
  INK,
  /** Grids, rules, side remarks. */
  QUIET,
  /** The ground that is drawn on, to leave something free. */
  GROUND,
  /** A limit of the engine's or ring's maker. */
  LIMIT,
  /** Where a value may lie; other things are seen through it. */
  BAND,
  /** The first gauging axis, or what was measured. */
  FIRST_AXIS,
  /** The second gauging axis, or what is expected. */
  SECOND_AXIS,
  /** Any further gauging axis. */
  OTHER_AXIS,
  /** What a person should look at. */
  ATTENTION
}
