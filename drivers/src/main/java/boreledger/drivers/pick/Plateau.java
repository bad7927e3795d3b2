package boreledger.drivers.pick;

import java.util.List;

/**
 * A stretch in which the level hardly moves: at least 0.8 s and four samples long, within 0.010 mm,
 * four digit steps or a fiftieth of its height above the floor, whichever is largest.
 *
 * <p>The limits are common practice, no source: nobody holds a gauge that still in a bore unless it
 * stands square, where the floor is, or leans on its stop in free air.
 */
final class Plateau {
  /** How far above the floor a plateau or a free gauge must be, in millimetres. */
  static final double WELL_ABOVE_MM = 0.2;

  private static final double LEAST_S = 0.8;
  private static final int LEAST_SAMPLES = 4;
  private static final double STEADY_MM = 0.010;
  private static final double OVERTOP_MM = 0.02;
  private static final double SHORT_REST_S = 0.2;
  private static final double LONGEST_TOP_S = 1;

  private final double stepsMm;

  Plateau(double resolutionMm) {
    stepsMm = 4 * resolutionMm;
  }

  /** Where the plateau begins that the samples end with; -1 when they end with none. */
  int start(List<Leveled> samples, double floorMm) {
    int end = samples.size() - 1;
    double steadyMm = steadyMm(samples.get(end).levelMm() - floorMm);
    double leastMm = Double.POSITIVE_INFINITY;
    double mostMm = Double.NEGATIVE_INFINITY;
    int start = end + 1;
    while (start > 0) {
      leastMm = Math.min(leastMm, samples.get(start - 1).levelMm());
      mostMm = Math.max(mostMm, samples.get(start - 1).levelMm());
      if (mostMm - leastMm > steadyMm) {
        break;
      }
      start--;
    }
    boolean isLong = start <= end && lengthS(samples, start) >= LEAST_S;
    return isLong && samples.size() - start >= LEAST_SAMPLES ? start : -1;
  }

  /**
   * Whether the plateau that begins at {@code start} is the gauge's stop in free air: well above
   * the floor, and above all but two of the samples before it, for the stop is as far as the gauge
   * can go.
   */
  boolean isFreeAir(List<Leveled> samples, int start, double floorMm) {
    double levelMm = samples.get(samples.size() - 1).levelMm();
    double heightMm = levelMm - floorMm;
    double topMm = levelMm + Math.max(OVERTOP_MM, heightMm / 10);
    long higher = samples.subList(0, start).stream().filter(s -> s.levelMm() > topMm).count();
    return heightMm > WELL_ABOVE_MM && higher <= 2;
  }

  /** Whether samples of these extreme levels are one plateau, however short. */
  boolean isSteady(double leastMm, double mostMm) {
    return mostMm - leastMm <= steadyMm(0);
  }

  /**
   * Where the samples at the end begin that are above what a reading could be and show by their
   * rest or by their length that this is no rocking; -1 when there are none. The top of a rock that
   * high is short and sharp.
   */
  int startOfAirAbove(List<Leveled> samples, double mostMm) {
    int start = samples.size();
    double leastMm = Double.POSITIVE_INFINITY;
    double topMm = Double.NEGATIVE_INFINITY;
    boolean rests = false;
    while (start > 0 && samples.get(start - 1).levelMm() > mostMm) {
      start--;
      leastMm = Math.min(leastMm, samples.get(start).levelMm());
      topMm = Math.max(topMm, samples.get(start).levelMm());
      rests |= isSteady(leastMm, topMm) && lengthS(samples, start) >= SHORT_REST_S;
    }
    boolean isLong = start < samples.size() && lengthS(samples, start) >= LONGEST_TOP_S;
    return rests || isLong ? start : -1;
  }

  /** How many of the first samples may go, so that the rest is a plateau still. */
  int spare(List<Leveled> plateau) {
    int spare = 0;
    while (plateau.size() - spare > LEAST_SAMPLES && lengthS(plateau, spare + 1) >= LEAST_S) {
      spare++;
    }
    return spare;
  }

  private static double lengthS(List<Leveled> samples, int start) {
    return samples.get(samples.size() - 1).sample().tS() - samples.get(start).sample().tS();
  }

  private double steadyMm(double heightMm) {
    return Math.max(Math.max(STEADY_MM, stepsMm), heightMm / 50);
  }
}
