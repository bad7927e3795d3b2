package boreledger.station.results;

import boreledger.calc.decision.Decision;
import boreledger.calc.decision.Limit;
import boreledger.calc.decision.State;
import boreledger.calc.uncertainty.Estimate;
import java.util.List;

/**
 * A number held against a limit of the job.
 *
 * @param check {@code taper}, {@code out-of-round}, {@code bore-min}, {@code bore-max}, {@code
 *     wear-limit}, {@code clearance-min} or {@code clearance-max}
 * @param state {@code within}, {@code beyond} or {@code undecided}; null as long as readings still
 *     to come could change it
 * @param probabilityWithin the probability, 0 to 1, that the true value keeps the limit
 * @param budget where the uncertainty comes from, line by line
 */
public record CheckResult(
    String check,
    double valueMm,
    double limitMm,
    double expandedUncertaintyMm,
    String state,
    double probabilityWithin,
    List<BudgetLine> budget) {
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
        decision.conformance(),
        BudgetLine.of(value.budget()));
  }

  boolean needsAttention() {
    return state != null && !state.equals(State.WITHIN.word());
  }
}
