package boreledger.calc.study;

import boreledger.calc.fit.StraightLine;
import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import boreledger.calc.uncertainty.Budget;
import boreledger.calc.uncertainty.StudentT;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How a gauge's bias changes over its range: the least-squares line of deviation against reference
 * value (AIAG MSA 4th ed., chapter III, section B).
 *
 * <p>The references' own uncertainties are not in the scatter and not in the band.
 *
 * @param biases the bias at each reference, from the smallest reference up
 * @param line deviation against reference, through all single readings
 */
public record LinearityStudy(List<Bias> biases, StraightLine line) {
  /** Takes a copy of the list. */
  public LinearityStudy {
    biases = List.copyOf(biases);
  }

  /**
   * Fits a study.
   *
   * @param readings three or more, of two or more different references
   * @throws ImpossibleInput when there are fewer
   */
  public static LinearityStudy of(List<ReferenceReading> readings) {
    Require.atLeast(3, readings.size(), "readings of references");
    Map<Double, List<Double>> byReference = new TreeMap<>();
    for (ReferenceReading reading : readings) {
      // Adding 0.0 makes one reference of 0 and -0.
      byReference
          .computeIfAbsent(reading.reference() + 0.0, none -> new ArrayList<>())
          .add(reading.deviation());
    }
    Require.atLeast(2, byReference.size(), "different references");
    List<Bias> biases = new ArrayList<>();
    byReference.forEach(
        (reference, deviations) -> biases.add(new Bias(reference, Sample.of(deviations))));
    return new LinearityStudy(
        biases,
        StraightLine.through(
            readings.stream().mapToDouble(ReferenceReading::reference).toArray(),
            readings.stream().mapToDouble(ReferenceReading::deviation).toArray()));
  }

  /** Change of the bias per unit of reference value, with its 95 % interval. */
  public Interval slope() {
    return new Interval(line.slope(), t() * slopeUncertainty());
  }

  /** Whether the bias changes over the range; empty when every reading is on the line. */
  public Optional<TTest> slopeTest() {
    return TTest.of(line.slope(), slopeUncertainty(), line.degreesOfFreedom());
  }

  /** The line's bias at reference 0, with its 95 % interval; far from the range it says little. */
  public Interval intercept() {
    return band(0);
  }

  /** Whether the intercept differs from zero; empty when every reading is on the line. */
  public Optional<TTest> interceptTest() {
    return TTest.of(line.at(0), uncertaintyAt(0), line.degreesOfFreedom());
  }

  /** The line's bias at a reference value, with the 95 % interval of the line there. */
  public Interval band(double reference) {
    return new Interval(line.at(reference), t() * uncertaintyAt(reference));
  }

  /**
   * Whether a bias of zero lies in the band from the smallest to the largest reference: then no
   * bias is shown anywhere in the range.
   */
  public boolean zeroInBandThroughout() {
    double low = biases.get(0).reference();
    double high = biases.get(biases.size() - 1).reference();
    double worst = Math.min(high, Math.max(low, worstInside()));
    return band(low).containsZero() && band(high).containsZero() && band(worst).containsZero();
  }

  /**
   * Where the line's square exceeds the band's most when it does so between the ends; the mean
   * reference when it does not. Both squares are parabolas; this is the top of their difference.
   */
  private double worstInside() {
    double halfSlope = slope().halfWidth();
    double opening = line.slope() * line.slope() - halfSlope * halfSlope;
    return opening < 0 ? line.meanX() - line.meanY() * line.slope() / opening : line.meanX();
  }

  private double slopeUncertainty() {
    return line.slopeStandardUncertainty().orElseThrow();
  }

  private double uncertaintyAt(double reference) {
    return line.standardUncertaintyAt(reference).orElseThrow();
  }

  private double t() {
    return StudentT.coverageFactor(Budget.LEVEL, line.degreesOfFreedom());
  }
}
