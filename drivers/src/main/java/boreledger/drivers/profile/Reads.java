package boreledger.drivers.profile;

/** What a gauge's value means. */
public enum Reads {
  /** The difference from the size it was set on. */
  DEVIATION,
  /** The size itself. */
  SIZE
}
