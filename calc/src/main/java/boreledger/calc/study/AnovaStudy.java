package boreledger.calc.study;

/**
 * A crossed study judged by analysis of variance (AIAG MSA 4th ed., chapter III, section B).
 *
 * <p>Variances are the mean squares' differences over the number of readings behind each mean; a
 * negative one is 0. The interaction is pooled with the equipment when its p is above 0.25 and then
 * is 0.
 *
 * <ul>
 *   <li>One appraiser: appraiser variation 0, interaction null.
 *   <li>Every trial repeats exactly: the interaction cannot be tested and is not pooled.
 * </ul>
 *
 * @param table the analysis before any pooling
 * @param pooled whether the interaction was pooled
 * @param variation what came out
 */
public record AnovaStudy(AnovaTable table, boolean pooled, GaugeVariation variation) {
  /** The interaction is pooled when its p is above this. */
  public static final double POOLING_P = 0.25;

  /** Judges a study and pools its interaction by the rule. */
  public static AnovaStudy of(CrossedStudy study) {
    AnovaTable table = AnovaTable.of(study);
    boolean pooled = table.interactionTest().filter(test -> test.p() > POOLING_P).isPresent();
    return new AnovaStudy(table, pooled, variation(study, table, pooled));
  }

  /** Judges a study and keeps its interaction apart, whatever its p. */
  public static AnovaStudy withoutPooling(CrossedStudy study) {
    AnovaTable table = AnovaTable.of(study);
    return new AnovaStudy(table, false, variation(study, table, false));
  }

  /** The analysis that the variation was taken from: after pooling, when there was any. */
  public AnovaTable tableUsed() {
    return pooled ? table.pooled() : table;
  }

  private static GaugeVariation variation(CrossedStudy study, AnovaTable table, boolean pooled) {
    AnovaTable used = pooled ? table.pooled() : table;
    int parts = study.parts().size();
    int appraisers = study.appraisers().size();
    int trials = study.trials().size();
    double ev = Math.sqrt(used.equipment().meanSquare());
    double pv = deviation(used.part(), used.error(), appraisers * trials);
    if (appraisers == 1) {
      return new GaugeVariation(ev, 0, null, pv);
    }
    double interaction = pooled ? 0 : deviation(used.interaction(), used.equipment(), trials);
    double av = deviation(used.appraiser(), used.error(), parts * trials);
    return new GaugeVariation(ev, av, interaction, pv);
  }

  private static double deviation(SumOfSquares effect, SumOfSquares error, int readingsPerMean) {
    double variance = (effect.meanSquare() - error.meanSquare()) / readingsPerMean;
    return Math.sqrt(Math.max(0, variance));
  }
}
