package boreledger.station.results;

import boreledger.calc.decision.Decision;
import boreledger.calc.decision.Limit;
import boreledger.calc.decision.State;
import boreledger.calc.uncertainty.Estimate;

/**
 * A number held against a limit of the job.
 *
 * @param check {@code taper}, {@code out-of-round}, {@code bore-min}, {@code bore-max} or {@code
 *     wear-limit}
 * @param state {@code within}, {@code beyond} or {@code undecided}; null as long as readings still
 *     to come could change it
 * @param probabilityWithin the probability, 0 to 1, that the true value keeps the limit
 */
public record CheckResult(
    String check,
    double valueMm,
    double limitMm,
    double expandedUncertaintyMm,
    String state,
    double probabilityWithin) {
  static CheckResult of(
      String check, Estimate value, Limit limit, double limitMm, boolean complete) {
    Decision decision = limit.decide(value);
    boolean certain = complete || decision.state() == State.BEYOND;
    return new CheckResult(
        check,
        value.valueMm(),
        limitMm,
        value.expandedUncertaintyMm(),
        certain ? decision.state().word() : null,
        decision.conformance());
  }

  boolean needsAttention() {
    return state != null && !state.equals(State.WITHIN.word());
  }
}
