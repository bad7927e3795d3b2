package boreledger.calc.ring;

import boreledger.calc.bore.Perimeter;
import boreledger.calc.bore.WeightedDiameters;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Component;
import boreledger.calc.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * A ring's length at 20 degrees Celsius from one or more gap readings, weighted by one over their
 * variance.
 *
 * @param parts each reading's part of the mean; the parts add up to 1
 */
record RingLength(Map<PlacedGap, Double> parts) {
  static RingLength of(List<PlacedGap> gaps) {
    double total = gaps.stream().mapToDouble(PlacedGap::weightPerMm2).sum();
    Map<PlacedGap, Double> parts = new LinkedHashMap<>();
    gaps.forEach(gap -> parts.put(gap, gap.weightPerMm2() / total));
    return new RingLength(parts);
  }

  double lengthMm() {
    return mean(PlacedGap::developedLengthMm);
  }

  /** The gap another reading should show, and how it scores against it. */
  Expectation.Predicted predict(PlacedGap target, Ring ring) {
    double expectedMm = target.perimeter().lengthMm() - lengthMm();
    Estimate expected = new Estimate(expectedMm, budgetAt(target.perimeter(), ring));
    double ownMm = target.reading().budget().expandedMm();
    double score =
        (target.atReferenceMm() - expectedMm) / Math.hypot(ownMm, expected.expandedUncertaintyMm());
    return new Expectation.Predicted(expected, score);
  }

  /** The budget of the gap at a perimeter: what bore and gap readings share there has left it. */
  Budget budgetAt(Perimeter there, Ring ring) {
    WeightedDiameters bore = there.sensitivity();
    for (Map.Entry<PlacedGap, Double> part : parts.entrySet()) {
      bore = bore.minus(part.getKey().perimeter().sensitivity().times(part.getValue()));
    }
    double changeMm = there.lengthMm() - mean(gap -> gap.perimeter().lengthMm());
    return bore.budget()
        .with(new Budget(gapLines()))
        .with(ring.fibre(changeMm, there.lengthMm() / Math.PI));
  }

  private List<Component> gapLines() {
    List<Component> lines = new ArrayList<>();
    parts.forEach(
        (gap, part) -> {
          Budget own = gap.reading().budget();
          lines.add(
              new Component(
                      "gap reading at " + gap.reading().depthMm() + " mm",
                      own.combinedMm(),
                      own.effectiveDegreesOfFreedom())
                  .times(part));
        });
    return lines;
  }

  private double mean(ToDoubleFunction<PlacedGap> quantity) {
    return parts.entrySet().stream()
        .mapToDouble(part -> part.getValue() * quantity.applyAsDouble(part.getKey()))
        .sum();
  }
}
