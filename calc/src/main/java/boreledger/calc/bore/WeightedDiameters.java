package boreledger.calc.bore;

import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.Estimate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A weighted sum of gauged diameters: one of them (weight 1), a mean (1/n each), a difference (1
 * and -1), a slope. Whatever the readings share enters its budget only by the sum of the weights,
 * and so leaves a difference.
 *
 * @param weights plain factors by diameter, in the order they were given
 */
public record WeightedDiameters(Map<Diameter, Double> weights) {
  /** Takes a copy that keeps the order, so that sums come out the same in every run. */
  public WeightedDiameters {
    weights = Collections.unmodifiableMap(new LinkedHashMap<>(weights));
  }

  /** A single diameter. */
  public static WeightedDiameters of(Diameter diameter) {
    return new WeightedDiameters(Map.of(diameter, 1.0));
  }

  /** The mean of one or more diameters. */
  public static WeightedDiameters meanOf(List<Diameter> diameters) {
    Map<Diameter, Double> each = new LinkedHashMap<>();
    diameters.forEach(diameter -> each.merge(diameter, 1.0 / diameters.size(), Double::sum));
    return new WeightedDiameters(each);
  }

  /** All weights times a plain factor. */
  public WeightedDiameters times(double factor) {
    Map<Diameter, Double> scaled = new LinkedHashMap<>();
    weights.forEach((diameter, weight) -> scaled.put(diameter, factor * weight));
    return new WeightedDiameters(scaled);
  }

  /** The sum of both. */
  public WeightedDiameters plus(WeightedDiameters other) {
    Map<Diameter, Double> sum = new LinkedHashMap<>(weights);
    other.weights.forEach((diameter, weight) -> sum.merge(diameter, weight, Double::sum));
    return new WeightedDiameters(sum);
  }

  /** This less the other. */
  public WeightedDiameters minus(WeightedDiameters other) {
    return plus(other.times(-1));
  }

  /** The sum's value in millimetres. */
  public double valueMm() {
    return weights.entrySet().stream()
        .mapToDouble(entry -> entry.getValue() * entry.getKey().diameterMm())
        .sum();
  }

  /** Where its uncertainty comes from. */
  public Budget budget() {
    return DiameterBudget.of(weights);
  }

  /** Value and budget. */
  public Estimate estimate() {
    return new Estimate(valueMm(), budget());
  }
}
