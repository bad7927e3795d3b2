package boreledger.station.results;

import boreledger.calc.uncertainty.Budget;
import java.util.List;

/**
 * One line of an uncertainty budget.
 *
 * @param line what it comes from, in words
 * @param standardUncertaintyMm its contribution in millimetres
 * @param share its part of the combined variance, 0 to 1
 */
public record BudgetLine(String line, double standardUncertaintyMm, double share) {
  static List<BudgetLine> of(Budget budget) {
    return budget.shares().stream()
        .map(
            share ->
                new BudgetLine(
                    share.component().name(),
                    share.component().standardUncertaintyMm(),
                    share.ofVariance()))
        .toList();
  }
}
