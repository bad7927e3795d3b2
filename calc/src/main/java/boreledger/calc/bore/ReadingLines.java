package boreledger.calc.bore;

import boreledger.calc.uncertainty.Component;
import boreledger.calc.uncertainty.TypeB;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Budget lines that stay in a difference: each reading's own resolution and scatter, the gauge's
 * permissible error of one displacement, and what the zero did between the checks.
 */
final class ReadingLines {
  private ReadingLines() {}

  static List<Component> of(BoreGauging session, Map<Diameter, Double> weights) {
    GaugeAccuracy gauge = session.gauge();
    List<Component> lines = new ArrayList<>();
    if (!gauge.maxErrorIncludesResolution()) {
      lines.add(
          Component.typeB("resolution of readings", TypeB.resolution(gauge.resolutionMm()))
              .times(rootSumOfSquares(weights, diameter -> true)));
    }
    if (!gauge.maxErrorIncludesRepeatability()) {
      lines.addAll(scatter(session, weights));
    }
    double displacement = displacement(weights);
    Component maxError =
        Component.typeB("gauge permissible error", TypeB.rectangular(gauge.maxErrorMm()));
    lines.add(maxError.times(displacement));
    lines.add(zero(session, weights, maxError).times(displacement));
    return lines;
  }

  /**
   * How many times one displacement's error counts: once for a size, a mean or a difference. The
   * errors of several axes are taken as one and the same, so a mean does not make them smaller.
   */
  private static double displacement(Map<Diameter, Double> weights) {
    double net = weights.values().stream().mapToDouble(Double::doubleValue).sum();
    double gross = weights.values().stream().mapToDouble(Math::abs).sum();
    return Math.max(Math.abs(net), gross / 2);
  }

  private static List<Component> scatter(BoreGauging session, Map<Diameter, Double> weights) {
    Predicate<Diameter> ownFigure = diameter -> diameter.reading().standardUncertaintyMm() != null;
    List<Component> lines = new ArrayList<>();
    double own = 0;
    for (Map.Entry<Diameter, Double> entry : weights.entrySet()) {
      if (ownFigure.test(entry.getKey())) {
        own = Math.hypot(own, entry.getValue() * entry.getKey().reading().standardUncertaintyMm());
      }
    }
    if (weights.keySet().stream().anyMatch(ownFigure)) {
      lines.add(Component.typeB("scatter of samples", own));
    }
    Repeatability repeatability = session.repeatability();
    if (repeatability != null && !weights.keySet().stream().allMatch(ownFigure)) {
      lines.add(
          new Component(
                  "repeatability",
                  repeatability.standardUncertaintyMm(),
                  repeatability.degreesOfFreedom())
              .times(rootSumOfSquares(weights, ownFigure.negate())));
    }
    return lines;
  }

  private static Component zero(
      BoreGauging session, Map<Diameter, Double> weights, Component maxError) {
    ZeroLine zero = session.zero();
    if (!weights.keySet().stream().allMatch(each -> zero.brackets(each.reading().tS()))) {
      return Component.typeB("zero not checked again", maxError.standardUncertaintyMm());
    }
    double change =
        weights.keySet().stream()
            .mapToDouble(each -> zero.changeAroundMm(each.reading().tS(), session.setting()))
            .max()
            .orElse(0);
    return Component.typeB("zero between checks", TypeB.rectangular(change / 2));
  }

  private static double rootSumOfSquares(
      Map<Diameter, Double> weights, Predicate<Diameter> counted) {
    double sum = 0;
    for (Map.Entry<Diameter, Double> entry : weights.entrySet()) {
      if (counted.test(entry.getKey())) {
        sum = Math.hypot(sum, entry.getValue());
      }
    }
    return sum;
  }
}
