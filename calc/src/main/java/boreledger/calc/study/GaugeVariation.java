package boreledger.calc.study;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Where the variation of a crossed study comes from, as standard deviations.
 *
 * <p>With one appraiser {@code av} is 0 and {@code interaction} null: the study says nothing about
 * other appraisers, and GRR is then repeatability alone.
 *
 * @param ev equipment variation, or repeatability; zero or more
 * @param av appraiser variation, or reproducibility without the interaction; zero or more
 * @param interaction of appraisers with parts; 0 when pooled into {@code ev}; null when the method
 *     cannot tell it from the rest
 * @param pv part variation; zero or more
 */
public record GaugeVariation(double ev, double av, Double interaction, double pv) {
  /** Gauge repeatability and reproducibility, interaction included. */
  public double grr() {
    double known = interaction == null ? 0 : interaction;
    return Math.sqrt(ev * ev + av * av + known * known);
  }

  /** Total variation of the study. */
  public double tv() {
    return Math.hypot(grr(), pv);
  }

  /** GRR as per cent of the study's total variation; empty when nothing varies. */
  public OptionalDouble percentGrr() {
    return percentOfStudy(grr());
  }

  /**
   * One of these standard deviations as per cent of the total variation; empty when nothing varies.
   * The percentages add in squares.
   */
  public OptionalDouble percentOfStudy(double standardDeviation) {
    return tv() == 0 ? OptionalDouble.empty() : OptionalDouble.of(100 * standardDeviation / tv());
  }

  /**
   * Six GRR standard deviations as per cent of a tolerance.
   *
   * @param tolerance upper minus lower limit in the readings' unit; above zero
   * @throws ImpossibleInput when the tolerance is not above zero
   */
  public double percentOfTolerance(double tolerance) {
    return percentOfTolerance(grr(), tolerance);
  }

  /**
   * Six times one of these standard deviations as per cent of a tolerance.
   *
   * @param tolerance upper minus lower limit in the readings' unit; above zero
   * @throws ImpossibleInput when the tolerance is not above zero
   */
  public double percentOfTolerance(double standardDeviation, double tolerance) {
    return 100 * 6 * standardDeviation / Require.positive("tolerance", tolerance, "");
  }

  /**
   * Number of distinct categories, 1.41 PV / GRR, unrounded (AIAG MSA 4th ed.); empty when GRR is
   * zero, which means that the display is too coarse for the study.
   */
  public OptionalDouble ndc() {
    return grr() == 0 ? OptionalDouble.empty() : OptionalDouble.of(1.41 * pv / grr());
  }

  /**
   * Number of distinct categories as a whole number: cut off, not rounded, and never below 1, as
   * the AIAG MSA manual has it, which asks for 5 or more; empty when GRR is zero.
   */
  public OptionalInt categories() {
    return ndc().isEmpty()
        ? OptionalInt.empty()
        : OptionalInt.of(Math.max(1, (int) ndc().getAsDouble()));
  }
}
