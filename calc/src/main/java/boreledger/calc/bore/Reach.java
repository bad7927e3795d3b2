package boreledger.calc.bore;

/** Where a depth lies against the gauged ones. */
public enum Reach {
  /** At a gauged depth. */
  GAUGED,
  /** Between two gauged depths. */
  BETWEEN,
  /** Above the shallowest gauged depth. */
  ABOVE,
  /** Below the deepest gauged depth. */
  BELOW;

  /** Whether nothing was gauged on one side of it, so that a value there is a guess. */
  public boolean beyondReadings() {
    return this == ABOVE || this == BELOW;
  }
}
