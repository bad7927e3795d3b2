package boreledger.calc.bore;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.util.List;

/**
 * How far repeated readings scatter.
 *
 * @param standardDeviationMm of single readings, in millimetres; zero or more
 * @param degreesOfFreedom of that standard deviation, as its study gives them; above zero, infinite
 *     for a figure taken as certain
 * @param readings how many readings are averaged into each one that is used; 1 or more
 */
public record Repeatability(double standardDeviationMm, double degreesOfFreedom, int readings) {
  /** Checks every number. */
  public Repeatability {
    Require.notNegative("repeatability", standardDeviationMm, "mm");
    Require.atLeast(1, readings, "readings in a mean");
    if (!(degreesOfFreedom > 0)) {
      throw new ImpossibleInput(
          "degrees of freedom of the repeatability " + degreesOfFreedom + " are not above zero");
    }
  }

  /** A figure from a gauge's profile, taken as certain, for single readings. */
  public static Repeatability stated(double standardDeviationMm) {
    return new Repeatability(standardDeviationMm, Double.POSITIVE_INFINITY, 1);
  }

  /**
   * The scatter of repeated readings of one thing, for single readings (JCGM 100:2008, 4.2.2).
   *
   * @param readingsMm two or more, in millimetres
   * @throws ImpossibleInput when there are fewer than two
   */
  public static Repeatability ofRepeats(List<Double> readingsMm) {
    Require.atLeast(2, readingsMm.size(), "repeated readings");
    double meanMm = readingsMm.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    double squares = readingsMm.stream().mapToDouble(each -> Math.pow(each - meanMm, 2)).sum();
    int degrees = readingsMm.size() - 1;
    return new Repeatability(Math.sqrt(squares / degrees), degrees, 1);
  }

  /** The standard uncertainty it gives one used reading, in millimetres. */
  public double standardUncertaintyMm() {
    return standardDeviationMm / Math.sqrt(readings);
  }
}
