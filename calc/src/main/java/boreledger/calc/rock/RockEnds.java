package boreledger.calc.rock;

/** Tells the rocking from the way into the bore and the way out of it. */
final class RockEnds {
  /** Part of an end's samples that may be rejected before the end is given up. */
  private static final double MOST_REJECTED = 0.25;

  /** Standard deviations by which an end's own value may be off. */
  private static final double MOST_OFF = 4;

  private RockEnds() {}

  /**
   * Leaves off the samples around the first or the last pass when they do not go with the rest.
   *
   * @return the same record when both ends are good
   */
  static RockTrace without(RockPasses passes, int fewest) {
    RockTrace trace = passes.fit().problem().trace();
    TiltSolution split = passes.count() < fewest ? null : passes.split();
    if (split == null) {
      return trace;
    }
    int last = passes.count() - 1;
    double fromS = trace.tS()[0];
    double toS = trace.tS()[trace.size() - 1];
    int[] stretch = passes.stretches();
    if (bad(passes, split, stretch, 0)) {
      fromS = trace.tS()[passes.farthestAfter(0)];
    }
    if (bad(passes, split, stretch, last)) {
      toS = trace.tS()[passes.farthestAfter(last - 1)];
    }
    return trace.between(fromS, toS);
  }

  private static boolean bad(RockPasses passes, TiltSolution split, int[] stretch, int k) {
    TiltFit fit = passes.fit();
    int all = 0;
    int rejected = 0;
    for (int i = 0; i < stretch.length; i++) {
      if (stretch[i] == k) {
        all++;
        rejected += fit.problem().used()[i] ? 0 : 1;
      }
    }
    double offMm = split.diameterMm()[k] - fit.diameterMm();
    double u = Math.sqrt(split.diameterVariance(k) * fit.noiseVariance());
    return rejected > MOST_REJECTED * all || Math.abs(offMm) > MOST_OFF * u;
  }
}
