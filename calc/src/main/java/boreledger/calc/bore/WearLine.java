package boreledger.calc.bore;

import boreledger.calc.fit.StraightLine;
import boreledger.calc.uncertainty.Estimate;
import java.util.List;
import java.util.Optional;

/**
 * The least-squares line of the mean diameter over depth, after an intended choke is taken off.
 *
 * @param line diameter in millimetres over depth in millimetres
 * @param change the line's rise from the shallowest to the deepest gauged depth, negative in a bore
 *     that narrows downward, with the budget of the readings
 * @param lengthMm from the shallowest to the deepest gauged depth, in millimetres
 */
public record WearLine(StraightLine line, Estimate change, double lengthMm) {
  /** The line of a profile; empty with a single depth. */
  public static Optional<WearLine> of(BoreProfile profile, IntendedProfile intended) {
    List<BoreSection> sections = profile.sections();
    if (sections.size() < 2) {
      return Optional.empty();
    }
    StraightLine line =
        StraightLine.through(
            sections.stream().mapToDouble(BoreSection::depthMm).toArray(),
            sections.stream()
                .mapToDouble(each -> each.meanMm() - intended.offsetMm(each.depthMm()))
                .toArray());
    double lengthMm = sections.get(sections.size() - 1).depthMm() - sections.get(0).depthMm();
    return Optional.of(
        new WearLine(
            line,
            new Estimate(line.slope() * lengthMm, rise(sections, line, lengthMm).budget()),
            lengthMm));
  }

  private static WeightedDiameters rise(
      List<BoreSection> sections, StraightLine line, double lengthMm) {
    return sections.stream()
        .map(
            each -> {
              double perMm = (each.depthMm() - line.meanX()) / line.squaresX();
              return each.mean().times(perMm * lengthMm);
            })
        .reduce(WeightedDiameters::plus)
        .orElseThrow();
  }

  /**
   * Millimetres of diameter per millimetre of depth; below zero in a bore that narrows downward.
   */
  public double slope() {
    return line.slope();
  }

  /**
   * Its standard uncertainty: the larger of what the readings' budget gives and what their scatter
   * about the line gives, since a bore that is not straight has no single slope.
   */
  public double slopeStandardUncertainty() {
    double byBudget = change.standardUncertaintyMm() / lengthMm;
    return Math.max(byBudget, line.slopeStandardUncertainty().orElse(0));
  }
}
