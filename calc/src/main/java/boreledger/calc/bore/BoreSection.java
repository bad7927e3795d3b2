package boreledger.calc.bore;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import boreledger.calc.uncertainty.Estimate;
import java.util.List;
import java.util.Optional;

/**
 * A cylinder's diameters at one depth.
 *
 * @param depthMm below the deck in millimetres
 * @param diameters one per axis, in the plan's order of axes; two are taken as perpendicular, three
 *     or more as evenly spaced over 180 degrees
 */
public record BoreSection(double depthMm, List<Diameter> diameters) {
  /**
   * Takes a copy and checks it.
   *
   * @throws ImpossibleInput when it is empty, a diameter is from another depth, or an axis is there
   *     twice
   */
  public BoreSection {
    diameters = List.copyOf(diameters);
    Require.atLeast(1, diameters.size(), "diameters of a section");
    for (Diameter each : diameters) {
      if (each.depthMm() != depthMm) {
        throw new ImpossibleInput(
            "diameter at " + each.depthMm() + " mm put into the section at " + depthMm + " mm");
      }
    }
    if (diameters.stream().map(Diameter::axis).distinct().count() < diameters.size()) {
      throw new ImpossibleInput("an axis is there twice in the section at " + depthMm + " mm");
    }
  }

  /** The mean over the axes. */
  public WeightedDiameters mean() {
    return WeightedDiameters.meanOf(diameters);
  }

  /** The mean over the axes in millimetres. */
  public double meanMm() {
    return mean().valueMm();
  }

  /** The largest and the smallest over the axes; empty with a single axis. */
  public Optional<LargestMinusSmallest> range() {
    return diameters.size() < 2
        ? Optional.empty()
        : Optional.of(LargestMinusSmallest.of(diameters));
  }

  /** Largest minus smallest over the axes; empty with a single axis. */
  public Optional<Estimate> outOfRound() {
    return range().map(LargestMinusSmallest::estimate);
  }

  /** The diameter on an axis; empty when it was not gauged here. */
  public Optional<Diameter> on(String axis) {
    return diameters.stream().filter(each -> each.axis().equals(axis)).findFirst();
  }

  /** The perimeter of the ellipse through the diameters. */
  public Perimeter perimeter() {
    double lengthMm =
        SectionShape.through(diameters.stream().map(Diameter::diameterMm).toList()).perimeterMm();
    return new Perimeter(depthMm, lengthMm, lengthMm, mean().times(Math.PI), Reach.GAUGED);
  }
}
