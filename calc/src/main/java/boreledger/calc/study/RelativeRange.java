package boreledger.calc.study;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The range of normally distributed readings in units of their standard deviation: its mean is d2
 * and its standard deviation d3 of the control-chart tables.
 *
 * <p>With F(w) the probability of a range up to w, which is n times the integral of phi(x) (Phi(x +
 * w) - Phi(x))^(n-1) over all x, d2 is the integral of 1 - F(w) and d2^2 + d3^2 that of 2 w (1 -
 * F(w)), both from 0. Sums over a grid give both to about 1e-8.
 *
 * @param readings how many the range is taken from; 2 or more
 * @param d2 mean of the range
 * @param d3 standard deviation of the range
 */
public record RelativeRange(int readings, double d2, double d3) {
  private static final double REACH = 9;
  private static final int STEPS = 360;
  private static final double STEP = 2 * REACH / STEPS;
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  // An integration takes milliseconds; a study asks for the same few sizes again and again.
  private static final Map<Integer, RelativeRange> KNOWN = new ConcurrentHashMap<>();

  /**
   * The range of this many readings.
   *
   * @throws ImpossibleInput when there are fewer than two
   */
  public static RelativeRange of(int readings) {
    Require.atLeast(2, readings, "readings of a range");
    return KNOWN.computeIfAbsent(readings, RelativeRange::integrate);
  }

  /** The range worked out afresh. */
  static RelativeRange integrate(int readings) {
    double[] density = new double[STEPS + 1];
    double[] below = new double[STEPS + 1];
    for (int i = 0; i <= STEPS; i++) {
      density[i] = NORMAL.density(i * STEP - REACH);
      below[i] = NORMAL.cumulativeProbability(i * STEP - REACH);
    }
    double mean = 0;
    double square = 0;
    for (int w = 0; w <= STEPS; w++) {
      double simpson = (w == 0 || w == STEPS ? 1 : w % 2 == 1 ? 4 : 2) * STEP / 3;
      double beyond = 1 - upTo(w, readings, density, below);
      mean += simpson * beyond;
      square += simpson * 2 * w * STEP * beyond;
    }
    return new RelativeRange(readings, mean, Math.sqrt(square - mean * mean));
  }

  /**
   * d2*, by which the mean of some ranges is divided to estimate the standard deviation when they
   * are few: root of d2^2 + d3^2 / ranges.
   *
   * @param ranges how many; 1 or more
   */
  public double d2Star(int ranges) {
    return Math.sqrt(d2 * d2 + d3 * d3 / ranges);
  }

  private static double upTo(int w, int readings, double[] density, double[] below) {
    double sum = 0;
    for (int i = 0; i <= STEPS; i++) {
      double inside = below[Math.min(STEPS, i + w)] - below[i];
      sum += density[i] * Math.pow(inside, readings - 1);
    }
    return readings * sum * STEP;
  }
}
