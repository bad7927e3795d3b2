package boreledger.station.bench.look;

import boreledger.station.bench.model.Verdict;

/** The sign of a verdict. */
public final class VerdictSign {
  private VerdictSign() {}

  /** Which sign stands beside a verdict. */
  public static Sign.Kind of(Verdict.Kind kind) {
    return switch (kind) {
      case KEPT -> Sign.Kind.TAKEN;
      case LOOK -> Sign.Kind.CAUTION;
      case BEYOND -> Sign.Kind.REFUSED;
      case OPEN -> Sign.Kind.OPEN;
    };
  }
}
