package boreledger.station.drawing;

import boreledger.station.results.BoreResults;
import boreledger.station.results.CheckResult;
import boreledger.station.wording.Phrase;

/** How a bore stands against the job's limits, the gravest finding first. */
public enum BoreState {
  /** Some limit is surely not kept. */
  BEYOND(Phrase.STATE_BEYOND),
  /** Some limit lies inside the uncertainty. */
  UNDECIDED(Phrase.STATE_UNDECIDED),
  /** Nothing was gauged. */
  NOT_GAUGED(Phrase.STATE_NOT_GAUGED),
  /** Some position has no reading yet. */
  INCOMPLETE(Phrase.STATE_INCOMPLETE),
  /** Everything was read, and the job gives no limit. */
  NO_LIMITS(Phrase.STATE_NO_LIMITS),
  /** Every limit that the job gives is surely kept. */
  WITHIN(Phrase.STATE_WITHIN);

  private final Phrase phrase;

  BoreState(Phrase phrase) {
    this.phrase = phrase;
  }

  /** What is said of it. */
  public Phrase phrase() {
    return phrase;
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
