package boreledger.calc.decision;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import boreledger.calc.uncertainty.Estimate;
import boreledger.calc.uncertainty.StudentT;

/**
 * A limit for a length: not above, not below, or between two. The limits themselves are allowed.
 */
public sealed interface Limit {
  /**
   * The probability that the true value keeps the limit.
   *
   * @param valueMm the measured value in millimetres
   * @param standardUncertaintyMm its standard uncertainty in millimetres; zero or more
   * @param degreesOfFreedom of that uncertainty; above zero, infinite allowed
   * @return 0 to 1
   */
  double conformance(double valueMm, double standardUncertaintyMm, double degreesOfFreedom);

  /** Decides about a value with its budget. */
  default Decision decide(Estimate estimate) {
    return decide(
        estimate.valueMm(),
        estimate.standardUncertaintyMm(),
        estimate.budget().effectiveDegreesOfFreedom());
  }

  /**
   * Decides about a value.
   *
   * @param valueMm the measured value in millimetres
   * @param standardUncertaintyMm its standard uncertainty in millimetres; zero or more
   * @param degreesOfFreedom of that uncertainty; above zero, infinite allowed
   */
  default Decision decide(double valueMm, double standardUncertaintyMm, double degreesOfFreedom) {
    Require.finite("value", valueMm, "mm");
    Require.notNegative("standard uncertainty", standardUncertaintyMm, "mm");
    return new Decision(
        this,
        valueMm,
        standardUncertaintyMm,
        degreesOfFreedom,
        conformance(valueMm, standardUncertaintyMm, degreesOfFreedom));
  }

  /** Not above a value, such as a wear limit. */
  record Upper(double limitMm) implements Limit {
    /** Checks that it is a number. */
    public Upper {
      Require.finite("upper limit", limitMm, "mm");
    }

    @Override
    public double conformance(
        double valueMm, double standardUncertaintyMm, double degreesOfFreedom) {
      return below(limitMm - valueMm, standardUncertaintyMm, degreesOfFreedom);
    }
  }

  /** Not below a value, such as a ring maker's smallest gap. */
  record Lower(double limitMm) implements Limit {
    /** Checks that it is a number. */
    public Lower {
      Require.finite("lower limit", limitMm, "mm");
    }

    @Override
    public double conformance(
        double valueMm, double standardUncertaintyMm, double degreesOfFreedom) {
      return below(valueMm - limitMm, standardUncertaintyMm, degreesOfFreedom);
    }
  }

  /** Between two values, such as the smallest and the largest bore; both tails count. */
  record Between(double lowerMm, double upperMm) implements Limit {
    /**
     * Checks the order.
     *
     * @throws ImpossibleInput when the lower limit is not below the upper
     */
    public Between {
      Require.finite("lower limit", lowerMm, "mm");
      Require.finite("upper limit", upperMm, "mm");
      if (lowerMm >= upperMm) {
        throw new ImpossibleInput(
            "lower limit " + lowerMm + " mm is not below the upper limit " + upperMm + " mm");
      }
    }

    @Override
    public double conformance(
        double valueMm, double standardUncertaintyMm, double degreesOfFreedom) {
      double notAbove = below(upperMm - valueMm, standardUncertaintyMm, degreesOfFreedom);
      double notBelow = below(valueMm - lowerMm, standardUncertaintyMm, degreesOfFreedom);
      // Rounding may leave a hair below nothing when the value is far outside.
      return Math.max(0, notAbove + notBelow - 1);
    }
  }

  private static double below(double roomMm, double standardUncertaintyMm, double degrees) {
    if (standardUncertaintyMm == 0) {
      return roomMm >= 0 ? 1 : 0;
    }
    return StudentT.cumulative(roomMm / standardUncertaintyMm, degrees);
  }
}
