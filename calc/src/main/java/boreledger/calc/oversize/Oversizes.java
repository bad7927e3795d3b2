package boreledger.calc.oversize;

import boreledger.calc.input.Require;
import java.util.List;
import java.util.Optional;

/**
 * The oversizes that pistons are made for.
 *
 * @param nominalMm the engine's nominal bore in millimetres; above zero
 * @param listMm how much larger each oversize is, above zero; kept rising; may be empty
 * @param honingAllowanceMm stock on the diameter left by boring for the hone; zero or more
 */
public record Oversizes(double nominalMm, List<Double> listMm, double honingAllowanceMm) {
  /** Binary fractions of decimal lengths may miss an exact fit by their last digit. */
  static final double LAST_DIGIT_MM = 1e-9;

  /** Sorts a copy and checks every number. */
  public Oversizes {
    Require.positive("nominal bore", nominalMm, "mm");
    Require.notNegative("honing allowance", honingAllowanceMm, "mm");
    listMm.forEach(each -> Require.positive("oversize", each, "mm"));
    listMm = listMm.stream().sorted().toList();
  }

  /**
   * The smallest oversize that is still as large as needed when it is bored.
   *
   * @param neededMm the diameter that boring must reach, in millimetres
   * @return the oversize; empty when none is large enough
   */
  public Optional<Double> smallestFor(double neededMm) {
    return listMm.stream().filter(each -> boredMm(each) >= neededMm - LAST_DIGIT_MM).findFirst();
  }

  /** What an oversize is bored to before it is honed, in millimetres. */
  public double boredMm(double oversizeMm) {
    return nominalMm + oversizeMm - honingAllowanceMm;
  }

  /** What an oversize is honed to, in millimetres. */
  public double finishedMm(double oversizeMm) {
    return nominalMm + oversizeMm;
  }

  /** Whether nothing larger is listed; then the remaining wall needs the maker's data. */
  public boolean isLargest(double oversizeMm) {
    return listMm.get(listMm.size() - 1) == oversizeMm;
  }
}
