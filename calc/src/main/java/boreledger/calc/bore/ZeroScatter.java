package boreledger.calc.bore;

import boreledger.calc.uncertainty.Component;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * What the checks' own scatter gives a size: {@code D = M + r - z}, and z is read as r is. Between
 * two checks z is {@code (1 - p) z1 + p z2}, so that each counts with its share (JCGM 100:2008,
 * 5.1.2), and all sizes that rest on one check share its error.
 */
final class ZeroScatter {
  private ZeroScatter() {}

  /** One line for the checks that know their own scatter, one for those of which a study tells. */
  static List<Component> of(BoreGauging session, Map<Diameter, Double> weights) {
    Map<ZeroCheck, Double> shares = new LinkedHashMap<>();
    weights.forEach(
        (diameter, weight) ->
            session
                .zero()
                .sharesAt(diameter.reading().tS())
                .forEach((check, share) -> shares.merge(check, weight * share, Double::sum)));
    List<Component> lines = new ArrayList<>();
    double own =
        rootSumOfSquares(
            shares,
            check -> check.standardUncertaintyMm() == null ? 0 : check.standardUncertaintyMm());
    if (own > 0) {
      lines.add(Component.typeB("scatter of the zero", own));
    }
    double others =
        rootSumOfSquares(shares, check -> check.standardUncertaintyMm() == null ? 1 : 0);
    Repeatability repeatability = session.repeatability();
    if (repeatability != null && others > 0) {
      lines.add(
          new Component(
                  "repeatability of the zero",
                  repeatability.standardUncertaintyMm(),
                  repeatability.degreesOfFreedom())
              .times(others));
    }
    return lines;
  }

  private static double rootSumOfSquares(
      Map<ZeroCheck, Double> shares, ToDoubleFunction<ZeroCheck> each) {
    return Math.sqrt(
        shares.entrySet().stream()
            .mapToDouble(entry -> entry.getValue() * each.applyAsDouble(entry.getKey()))
            .map(part -> part * part)
            .sum());
  }
}
