package boreledger.station.drawing;

import boreledger.station.results.BoreResults;
import boreledger.station.results.CheckResult;

/** How a bore stands against the job's limits, the gravest finding first. */
public enum BoreState {
  /** Some limit is surely not kept. */
  BEYOND("beyond a limit"),
  /** Some limit lies inside the uncertainty. */
  UNDECIDED("undecided"),
  /** Nothing was gauged. */
  NOT_GAUGED("not gauged"),
  /** Some position has no reading yet. */
  INCOMPLETE("not all read"),
  /** Everything was read, and the job gives no limit. */
  NO_LIMITS("no limits given"),
  /** Every limit that the job gives is surely kept. */
  WITHIN("within limits");

  private final String words;

  BoreState(String words) {
    this.words = words;
  }

  /** The state in words. */
  public String words() {
    return words;
  }

  /** The state of a bore. */
  public static BoreState of(BoreResults bore) {
    if (has(bore, "beyond")) {
      return BEYOND;
    } else if (has(bore, "undecided")) {
      return UNDECIDED;
    }
    long read = bore.positions().stream().filter(each -> each.diameterMm() != null).count();
    if (read == 0) {
      return NOT_GAUGED;
    } else if (read < bore.positions().size()) {
      return INCOMPLETE;
    }
    return bore.checks().isEmpty() ? NO_LIMITS : WITHIN;
  }

  private static boolean has(BoreResults bore, String state) {
    return bore.checks().stream().map(CheckResult::state).anyMatch(state::equals);
  }
}
